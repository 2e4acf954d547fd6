package stenotherm.picture;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;

/** The look at labels finds what it looks for. */
class ReportLabelsTest {
  private static String page(int y) {
    return """
    <p>above</p><svg xmlns="http://www.w3.org/2000/svg" width="200" height="100">
    <text x="10" y="50" font-size="12">one label</text>
    <text x="30" y="%d" font-size="12">another</text>
    </svg><p>below</p>
    """
        .replace("%d", Integer.toString(y));
  }

  @Test
  void labelsThatCoverEachOtherOrTheEdgeAreFound() {
    assertEquals(List.of("'one label' and 'another'"), ReportLabels.collisions(page(55)));
    assertEquals(List.of(), ReportLabels.collisions(page(65)));
    assertEquals(List.of("another"), ReportLabels.clipped(page(105)));
    assertEquals(2, ReportLabels.count(page(65)));
  }
}
