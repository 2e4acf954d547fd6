package stenotherm.transit;

import java.util.ArrayList;
import java.util.List;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import stenotherm.base.Face;
import stenotherm.base.InvalidInputException;
import stenotherm.base.Range;
import stenotherm.grid.Box;
import stenotherm.grid.FacePatch;
import stenotherm.journey.Contact;
import stenotherm.journey.Journey;
import stenotherm.journey.Leg;

/**
 * The parts of faces that meet something else in any leg of some journeys: the rectangles between
 * all edges of all contacts, so that in each leg a part meets one thing only.
 */
final class FaceParts {
  /** Edges this close are one edge but for round-off, as a part of the face's extent. */
  private static final double ROUND_OFF = 1e-9;

  /** A part that lies on a contact in some leg. */
  record Part(FacePatch patch, Range first, Range second) {
    boolean liesOn(Contact contact) {
      double middle = (first.low() + first.high()) / 2;
      double other = (second.low() + second.high()) / 2;
      return contact.face() == patch.face()
          && contact.first().contains(middle)
          && contact.second().contains(other);
    }
  }

  private final List<Part> parts = new ArrayList<>();
  private final List<Contact> contacts;

  private FaceParts(Box outer, List<Contact> contacts) {
    this.contacts = contacts;
    for (Face face : Face.values()) {
      addParts(face, contacts.stream().filter(contact -> contact.face() == face).toList(), outer);
    }
  }

  /** The parts of the faces that meet something else on any of some journeys. */
  static FaceParts on(List<Journey> journeys, Box outer) {
    return of(journeys.stream().flatMap(FaceParts::contactsOf).toList(), outer);
  }

  /** The parts of the faces that some contacts cover. */
  static FaceParts of(List<Contact> contacts, Box outer) {
    List<Contact> different = new ArrayList<>();
    for (Contact contact : contacts) {
      if (different.stream().noneMatch(contact::coversSameAs)) {
        different.add(contact);
      }
    }
    return new FaceParts(outer, List.copyOf(different));
  }

  /** One contact for each part of a face that any covers. */
  List<Contact> contacts() {
    return contacts;
  }

  private void addParts(Face face, List<Contact> contacts, Box outer) {
    SortedSet<Double> firstEdges = new TreeSet<>();
    SortedSet<Double> secondEdges = new TreeSet<>();
    for (Contact contact : contacts) {
      firstEdges.addAll(List.of(contact.first().low(), contact.first().high()));
      secondEdges.addAll(List.of(contact.second().low(), contact.second().high()));
    }
    int number = 0;
    for (Range second : between(secondEdges)) {
      for (Range first : between(firstEdges)) {
        String name = "part " + (number + 1) + " of " + face.label();
        Part part = new Part(FacePatch.part(name, face, outer, first, second), first, second);
        if (contacts.stream().anyMatch(part::liesOn)) {
          parts.add(part);
          number++;
        }
      }
    }
  }

  private static Stream<Contact> contactsOf(Journey journey) {
    return journey.legs().stream().flatMap(leg -> leg.surroundings().contacts().stream());
  }

  /** Refuses a journey in which the parcel touches something on other parts of its faces. */
  void requireContactsOf(Journey journey) {
    contactsOf(journey)
        .filter(contact -> contacts.stream().noneMatch(contact::coversSameAs))
        .findFirst()
        .ifPresent(
            contact -> {
              throw new InvalidInputException(
                  "contact on the " + contact.face().words(),
                  "covers a part of the face that the model was not built for; build it for this"
                      + " journey as well");
            });
  }

  private static List<Range> between(SortedSet<Double> edges) {
    List<Range> ranges = new ArrayList<>();
    Double last = null;
    for (Double edge : edges) {
      if (last == null) {
        last = edge;
      } else if (edge - last > ROUND_OFF) {
        ranges.add(new Range(last, edge));
        last = edge;
      }
    }
    return ranges;
  }

  List<FacePatch> patches() {
    return parts.stream().map(Part::patch).toList();
  }

  /** What the boundary of a name meets in a leg; null if it is as the rest of its face. */
  Contact.@Nullable Condition condition(String boundary, Leg leg) {
    for (Part part : parts) {
      if (part.patch().name().equals(boundary)) {
        Contact.Condition found = null;
        for (Contact contact : leg.surroundings().contacts()) {
          found = part.liesOn(contact) ? contact.condition() : found;
        }
        return found;
      }
    }
    return null;
  }

  /** The face that a boundary of a parcel is or lies on. */
  Face faceOf(String boundary) {
    for (Face face : Face.values()) {
      if (face.label().equals(boundary)) {
        return face;
      }
    }
    return parts.stream()
        .map(Part::patch)
        .filter(patch -> patch.name().equals(boundary))
        .findFirst()
        .orElseThrow()
        .face();
  }
}
