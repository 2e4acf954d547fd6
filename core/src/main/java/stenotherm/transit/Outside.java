package stenotherm.transit;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import stenotherm.ambient.FaceFilms;
import stenotherm.ambient.SolAir;
import stenotherm.ambient.Sunshine;
import stenotherm.base.Face;
import stenotherm.base.Range;
import stenotherm.base.TimeFunction;
import stenotherm.conduction.Port;
import stenotherm.journey.Contact;
import stenotherm.journey.Leg;
import stenotherm.journey.Surroundings;

/** What the boundaries of a parcel meet outside during one leg. */
final class Outside {
  /** Passes from film to sol-air temperature and back; the second changes h by some percent. */
  private static final int SUNLIT_PASSES = 3;

  private final Surroundings surroundings;
  private final MetAir air;
  private final double filmFactor;
  private final double absorptance;
  private final Meeting[] meetings;
  private final double[] coefficients;

  /** Mean temperature of the air over spans of time, without the shift [K]. */
  private final Map<Range, Double> meanAmbients = new HashMap<>();

  /** What one boundary meets: a film or a thing that touches it. */
  private record Meeting(
      Face face, Contact.@Nullable Condition contact, @Nullable TimeFunction sun, double skyLoss) {
    boolean hasFilm() {
      return !(contact instanceof Contact.Neighbour) && !(contact instanceof Contact.Insulated);
    }
  }

  /**
   * What a leg has outside.
   *
   * @param air the temperature that the parcel meets
   */
  Outside(
      Leg leg, MetAir air, List<Port.BoundaryPort> ports, FaceParts parts, Variation variation) {
    this.surroundings = leg.surroundings();
    this.air = air;
    this.filmFactor = Factor.FILM_FACTORS.at(variation.of(Factor.SURFACE_FILM), 1);
    Sunshine sunshine = surroundings.sunshine();
    this.absorptance =
        sunshine
            .absorptance()
            .range()
            .at(variation.of(Factor.SOLAR_ABSORPTANCE), sunshine.absorptance().nominal());
    this.coefficients = new double[ports.size()];
    this.meetings =
        ports.stream()
            .map(port -> meeting(parts.faceOf(port.name()), parts.condition(port.name(), leg)))
            .toArray(Meeting[]::new);
  }

  private Meeting meeting(Face face, Contact.@Nullable Condition contact) {
    if (surroundings.films().rests(face, surroundings.orientation())) {
      return new Meeting(face, contact, null, 0);
    }
    Sunshine sunshine = surroundings.sunshine();
    TimeFunction sun = null;
    for (Face world : Face.values()) {
      if (surroundings.orientation().facing(world) == face) {
        sun = sunshine.irradiance().get(world);
      }
    }
    if (contact instanceof Contact.Sunlit own) {
      sun = own.irradiance();
    }
    boolean seesSky = face == surroundings.orientation().up();
    return new Meeting(
        face, contact, sun, seesSky ? surroundings.films().emissivity() * sunshine.skyLoss() : 0);
  }

  /**
   * Surface coefficients for the mean ambient and the mean sun from one time to another, and the
   * surface temperatures at its start [W/(m2 K)]. A face in the sun is taken to have its sol-air
   * temperature.
   */
  double[] coefficients(double[] surface, double from, double to) {
    for (int port = 0; port < meetings.length; port++) {
      Meeting meeting = meetings[port];
      double ambient = meanAmbient(from, to);
      double sun = meeting.sun() == null ? 0 : meeting.sun().mean(from, to);
      coefficients[port] = coefficient(meeting, surface[port], ambient, sun);
    }
    return coefficients.clone();
  }

  /** Takes surface coefficients that were found before [W/(m2 K)]. */
  void use(double[] found) {
    System.arraycopy(found, 0, coefficients, 0, coefficients.length);
  }

  /**
   * Surface coefficients for the mean ambient from one time to another and the mean surface
   * temperatures over it [W/(m2 K)].
   */
  double[] meanCoefficients(double[] surface, double from, double to) {
    double[] found = new double[meetings.length];
    double ambient = meanAmbient(from, to);
    for (int port = 0; port < found.length; port++) {
      found[port] = coefficient(meetings[port], surface[port], ambient, 0);
    }
    return found;
  }

  /** Mean temperature of the air [K]. Each pass through a journey asks for the same intervals. */
  double meanAmbient(double from, double to) {
    return meanAmbients.computeIfAbsent(
            new Range(from, to), span -> air.course().mean(span.low(), span.high()))
        + air.shift();
  }

  /** Temperature of the air at a time [K]. */
  double air(double time) {
    return air.before(time);
  }

  /** Tells whether a boundary meets nothing but the air. */
  boolean meetsAirAlone(int port) {
    Meeting meeting = meetings[port];
    return !(meeting.contact() instanceof Contact.Neighbour)
        && !(meeting.hasFilm() && (meeting.sun() != null || meeting.skyLoss() > 0));
  }

  /** Surface coefficients at one time, for the surface temperatures then [W/(m2 K)]. */
  double[] coefficients(double[] surface, double time) {
    for (int port = 0; port < meetings.length; port++) {
      double ambient = air.course().at(time) + air.shift();
      coefficients[port] = coefficient(meetings[port], surface[port], ambient, 0);
    }
    return coefficients.clone();
  }

  private double coefficient(Meeting meeting, double surface, double ambient, double sun) {
    if (meeting.contact() instanceof Contact.Insulated) {
      return 0;
    }
    if (meeting.contact() instanceof Contact.Neighbour neighbour) {
      return 1 / neighbour.resistance();
    }
    double coefficient = film(meeting.face(), surface, ambient);
    if (absorptance * sun > 0) {
      for (int pass = 0; pass < SUNLIT_PASSES; pass++) {
        double rise = SolAir.rise(absorptance * sun, meeting.skyLoss(), coefficient);
        coefficient = film(meeting.face(), ambient + rise, ambient);
      }
    }
    return coefficient;
  }

  private double film(Face face, double surface, double ambient) {
    FaceFilms films = surroundings.films();
    return filmFactor
        * films.coefficient(
            face, surroundings.orientation(), surface, ambient, surroundings.pressure());
  }

  /**
   * Puts the temperature that each boundary meets at a time [K] first into an array; {@code before}
   * takes the limit from earlier times.
   */
  void inputs(double time, boolean before, double[] into) {
    double ambient = value(air.course(), time, before) + air.shift();
    for (int port = 0; port < meetings.length; port++) {
      Meeting meeting = meetings[port];
      into[port] = ambient;
      if (meeting.contact() instanceof Contact.Neighbour neighbour) {
        into[port] = value(neighbour.temperature(), time, before) + air.shift();
      } else if (meeting.hasFilm() && (meeting.sun() != null || meeting.skyLoss() > 0)) {
        double sun = meeting.sun() == null ? 0 : value(meeting.sun(), time, before);
        into[port] += SolAir.rise(absorptance * sun, meeting.skyLoss(), coefficients[port]);
      }
    }
  }

  static double value(TimeFunction function, double time, boolean before) {
    return before ? function.before(time) : function.at(time);
  }

  /** Everything outside that varies in time. */
  List<TimeFunction> courses() {
    List<TimeFunction> all = new ArrayList<>();
    all.add(air.course());
    for (Meeting meeting : meetings) {
      if (meeting.sun() != null) {
        all.add(meeting.sun());
      }
      if (meeting.contact() instanceof Contact.Neighbour neighbour) {
        all.add(neighbour.temperature());
      }
    }
    return all;
  }
}
