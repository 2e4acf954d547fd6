package stenotherm.words;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import stenotherm.base.Face;

class FaceNamesTest {
  @ParameterizedTest
  @EnumSource
  void everyFaceIsFoundByItsName(Face face) {
    assertEquals(face, FaceNames.all().get(face.words()));
    assertEquals(face.words(), FaceNames.in(face.label()));
  }

  @ParameterizedTest
  @CsvSource({
    "part 1 of zMax, part 1 of lid",
    "wall yMin and zMin, wall front and floor",
    "xMaximum, xMaximum",
    "fill, fill",
  })
  void labelsBecomeNames(String text, String named) {
    assertEquals(named, FaceNames.in(text));
  }

  @Test
  void sixFaces() {
    assertEquals(6, FaceNames.all().size());
  }
}
