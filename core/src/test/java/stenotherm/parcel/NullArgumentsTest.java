package stenotherm.parcel;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.lang.reflect.Constructor;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.RecordComponent;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import stenotherm.ambient.Ambient;
import stenotherm.ambient.FaceFilms;
import stenotherm.base.Face;
import stenotherm.base.InvalidInputException;
import stenotherm.base.Range;
import stenotherm.base.Source;
import stenotherm.grid.Box;
import stenotherm.grid.FacePatch;
import stenotherm.grid.MeshControl;
import stenotherm.journey.Contact;
import stenotherm.journey.Journey;
import stenotherm.journey.Leg;
import stenotherm.journey.Place;
import stenotherm.journey.Surroundings;

/** A null is refused by the name of what it stands for, in each record of the main packages. */
class NullArgumentsTest {
  private static final Set<String> PACKAGES =
      Set.of("stenotherm.grid", "stenotherm.parcel", "stenotherm.journey", "stenotherm.ambient");

  private static void collect(Object value, Map<Class<?>, Record> found) {
    if (value instanceof Optional<?> optional) {
      optional.ifPresent(held -> collect(held, found));
    } else if (value instanceof Collection<?> all) {
      all.forEach(held -> collect(held, found));
    } else if (value instanceof Map<?, ?> map) {
      map.values().forEach(held -> collect(held, found));
    } else if (value instanceof Record one
        && PACKAGES.contains(one.getClass().getPackageName())
        && found.putIfAbsent(one.getClass(), one) == null) {
      for (Object component : components(one)) {
        collect(component, found);
      }
    }
  }

  private static Object[] components(Record one) {
    return Arrays.stream(one.getClass().getRecordComponents())
        .map(
            component -> {
              try {
                component.getAccessor().setAccessible(true);
                return component.getAccessor().invoke(one);
              } catch (ReflectiveOperationException fault) {
                throw new AssertionError(fault);
              }
            })
        .toArray();
  }

  private static List<Object> samples() {
    Surroundings surroundings =
        Surroundings.of(Ambient.constant(285), 2, FaceFilms.indoors())
            .touching(
                List.of(
                    Contact.whole(Face.X_MIN, new Contact.Neighbour(Ambient.constant(290), 0.1))));
    Leg leg =
        new Leg(
            "van",
            new Place("here", ZoneOffset.UTC),
            7200,
            0,
            surroundings,
            Source.assumed("a test"));
    Parcel parcel = Packings.warmed(List.of());
    return List.of(
        parcel,
        parcel.layout(),
        new Journey(LocalDateTime.of(2024, 1, 15, 18, 0), 293, List.of(leg)),
        MeshControl.uniform(0.01),
        FacePatch.part("spot", Face.Z_MAX, parcel.outer(), new Range(0, 1), new Range(0, 0.5)));
  }

  @Test
  void everyRecordNamesTheNull() {
    Map<Class<?>, Record> found = new LinkedHashMap<>();
    samples().forEach(sample -> collect(sample, found));
    assertTrue(found.size() > 20, found.keySet().toString());
    List<String> missed = new ArrayList<>();
    found.values().forEach(one -> tryNulls(one, missed));
    assertEquals(List.of(), missed);
  }

  private static void tryNulls(Record one, List<String> missed) {
    RecordComponent[] parts = one.getClass().getRecordComponents();
    Class<?>[] types = Arrays.stream(parts).map(RecordComponent::getType).toArray(Class<?>[]::new);
    for (int part = 0; part < parts.length; part++) {
      if (types[part].isPrimitive()) {
        continue;
      }
      Object[] values = components(one);
      values[part] = null;
      String what = one.getClass().getSimpleName() + "." + parts[part].getName();
      try {
        Constructor<?> constructor = one.getClass().getDeclaredConstructor(types);
        constructor.setAccessible(true);
        constructor.newInstance(values);
        missed.add(what);
      } catch (InvocationTargetException thrown) {
        InvalidInputException fault =
            assertInstanceOf(InvalidInputException.class, thrown.getCause(), what);
        assertEquals("must not be null", fault.problem(), what);
        String letters = fault.field().replace(" ", "").toLowerCase(Locale.ROOT);
        assertEquals(parts[part].getName().toLowerCase(Locale.ROOT), letters, what);
      } catch (ReflectiveOperationException fault) {
        throw new AssertionError(what, fault);
      }
    }
  }

  @Test
  void listsHoldNoNull() {
    List<Contact> holes = new ArrayList<>();
    holes.add(null);
    Surroundings good = Surroundings.of(Ambient.constant(285), 2, FaceFilms.indoors());
    assertEquals(
        "contacts: must not hold a null",
        assertThrows(InvalidInputException.class, () -> good.touching(holes)).getMessage());
  }

  @Test
  void aPartOfAFaceIsAtMostTheFace() {
    Range beyond = new Range(0, 1.5);
    assertEquals(
        "part of a face: 1.5 must lie between 0 and 1. The whole face is 0 to 1.",
        assertThrows(
                InvalidInputException.class,
                () ->
                    FacePatch.part(
                        "spot", Face.Z_MAX, Box.ofSize(1, 1, 1), new Range(0, 1), beyond))
            .getMessage());
  }

  @Test
  void aRangeTellsItsName() {
    assertEquals(
        "opening hours: from 5.0 to 3.0: the low end must not be above the high end",
        assertThrows(InvalidInputException.class, () -> Range.of("opening hours", 5, 3))
            .getMessage());
  }
}
