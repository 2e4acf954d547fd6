package stenotherm.decision;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.Set;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import stenotherm.ambient.AmbientRule;
import stenotherm.ambient.Situation;
import stenotherm.ambient.Situations;
import stenotherm.ambient.SolarAbsorptance;
import stenotherm.ambient.Stowage;
import stenotherm.ambient.Sunshine;
import stenotherm.base.Axis;
import stenotherm.base.Checks;
import stenotherm.base.Face;
import stenotherm.base.InvalidInputException;
import stenotherm.base.Orientation;
import stenotherm.base.Source;
import stenotherm.base.TimeFunction;
import stenotherm.base.Times;
import stenotherm.grid.Box;
import stenotherm.journey.Journey;
import stenotherm.journey.Leg;
import stenotherm.journey.Surroundings;
import stenotherm.parcel.Container;
import stenotherm.parcel.Dimensions;
import stenotherm.parcel.Filling;
import stenotherm.parcel.FilmCover;
import stenotherm.parcel.Openings;
import stenotherm.parcel.PackStart;
import stenotherm.parcel.Parcel;
import stenotherm.parcel.PlacedPack;
import stenotherm.parcel.PlacedWarmer;
import stenotherm.parcel.Placement;
import stenotherm.parcel.Position;
import stenotherm.warmer.IronPowder;
import stenotherm.warmer.WarmerClass;

/**
 * One thing that goes wrong with a shipment.
 *
 * <p>Experimental. Values, thus thread-safe.
 */
public sealed interface Mishap {
  /** What it happens to. Two of one kind do not happen together, but for a user's own. */
  enum Concern {
    /** The hours. */
    HOURS,
    /** The weather. */
    WEATHER,
    /** Vehicles. */
    VEHICLE,
    /** The sun. */
    SUN,
    /** How the parcel lies. */
    LIE,
    /** Fill. */
    FILL,
    /** The warmers. */
    WARMER,
    /** The packs. */
    PACK,
    /** Openings. */
    OPENINGS,
    /** What a user adds. */
    OWN;

    private boolean excludes(Concern other) {
      return this == other || Set.of(this, other).equals(Set.of(SUN, LIE));
    }
  }

  /**
   * Lets it happen.
   *
   * @param parcel the packing
   * @param journey its journey
   * @return both, one of them changed; both as they were where it changes nothing
   * @throws InvalidInputException if it cannot happen to this shipment; the message says why
   */
  Remedy.Shipment applyTo(Parcel parcel, Journey journey);

  /**
   * Says what happens.
   *
   * @param units writes quantities in the reader's units
   * @return for example "the warmer dead"
   */
  String words(UnitWords units);

  /**
   * Says what happens on a journey.
   *
   * @param units writes quantities in the reader's units
   * @param journey the journey that it happens on, as it is without it
   * @return the same as without a journey, with the leg that it chooses itself, if it does
   */
  default String words(UnitWords units, Journey journey) {
    return words(units);
  }

  /**
   * Returns what it happens to.
   *
   * @return the kind; of two, the one of the earlier kind happens first
   */
  Concern kind();

  /**
   * Returns all that it happens to.
   *
   * @return its kind; for a user's own the kinds of its parts, none where they are not known
   */
  default Set<Concern> concerns() {
    return Set.of(kind());
  }

  /**
   * Tells whether two do not happen together here.
   *
   * @param other the other one
   * @return whether both are the same, or both happen to the same, or one is the sun on the lid and
   *     the other has the lid elsewhere
   */
  default boolean excludes(Mishap other) {
    return equals(other)
        || concerns().stream()
            .anyMatch(mine -> other.concerns().stream().anyMatch(its -> mine.excludes(its)));
  }

  /**
   * Lists what goes wrong as a rule; some may not be possible.
   *
   * @param journey the journey
   * @param late how much later a leg ends [s], above 0
   * @return the mishaps
   * @throws InvalidInputException if that is not above 0
   */
  static List<Mishap> usual(Journey journey, double late) {
    List<Mishap> all = new ArrayList<>();
    for (int leg = 0; leg < journey.legs().size(); leg++) {
      all.add(new Late(leg, journey.legs().get(leg).name(), late));
    }
    all.add(new MissedForecast(-MissedForecast.USUAL));
    all.add(new MissedForecast(MissedForecast.USUAL));
    all.add(new UnheatedVehicle());
    all.add(new SunOnLid());
    for (Orientation each : Orientation.values()) {
      if (each != Orientation.LID_UP) {
        all.add(new Lying(each));
      }
    }
    all.add(new NoFill());
    all.add(new LooseWarmer());
    all.add(new DeadWarmer());
    all.add(new CoveredFilm());
    all.add(new LoosePack());
    all.add(new HalfFrozenPack());
    all.add(new ForgottenPack());
    all.add(new BlockedOpenings());
    return List.copyOf(all);
  }

  /**
   * A leg takes longer; all later ones come later by as much.
   *
   * @param leg position of the leg
   * @param name its name
   * @param delay how much longer [s], above 0
   */
  record Late(int leg, String name, double delay) implements Mishap {
    /**
     * Checks the parts.
     *
     * @throws InvalidInputException if the delay is not above 0
     */
    public Late {
      Checks.given("name", name);
      Checks.positive("delay", delay, "s");
    }

    @Override
    public Remedy.Shipment applyTo(Parcel parcel, Journey journey) {
      return new Remedy.Shipment(parcel, journey.delayed(leg, delay));
    }

    @Override
    public String words(UnitWords units) {
      String much =
          delay == Times.DAY ? "a day" : Checks.show(Math.rint(Times.toHours(delay)), "h");
      return much + " late in '" + name + "'";
    }

    @Override
    public Concern kind() {
      return Concern.HOURS;
    }
  }

  /**
   * Weather that is colder or warmer than forecast, in all legs that it reaches; in all legs where
   * none is known to follow the weather.
   *
   * @param kelvin how much warmer [K], negative for colder
   */
  record MissedForecast(double kelvin) implements Mishap {
    private static final double USUAL = 5;

    @Override
    public Remedy.Shipment applyTo(Parcel parcel, Journey journey) {
      boolean known = journey.legs().stream().anyMatch(Mishap::followsWeather);
      return new Remedy.Shipment(
          parcel,
          withEach(
              journey,
              leg ->
                  !known || followsWeather(leg) ? leg.in(leg.surroundings().warmer(kelvin)) : leg));
    }

    @Override
    public String words(UnitWords units) {
      return units.difference(Math.abs(kelvin))
          + (kelvin < 0 ? " colder" : " warmer")
          + " than forecast";
    }

    @Override
    public Concern kind() {
      return Concern.WEATHER;
    }
  }

  /**
   * A leg that is colder or warmer than stated.
   *
   * @param leg position of the leg
   * @param name its name
   * @param kelvin how much warmer [K], negative for colder
   */
  record OtherAir(int leg, String name, double kelvin) implements Mishap {
    /**
     * Checks the parts.
     *
     * @throws InvalidInputException if the difference is not finite
     */
    public OtherAir {
      Checks.given("name", name);
      Checks.finite("difference", kelvin, "K");
    }

    @Override
    public Remedy.Shipment applyTo(Parcel parcel, Journey journey) {
      List<Leg> legs = new ArrayList<>(journey.legs());
      Leg stated = legs.get(existing(leg, journey));
      legs.set(leg, stated.in(stated.surroundings().warmer(kelvin)));
      return new Remedy.Shipment(
          parcel, new Journey(journey.sealing(), journey.startTemperature(), legs));
    }

    @Override
    public String words(UnitWords units) {
      return units.difference(Math.abs(kelvin))
          + (kelvin < 0 ? " colder in '" : " warmer in '")
          + name
          + "'";
    }

    @Override
    public Concern kind() {
      return Concern.WEATHER;
    }
  }

  /**
   * The heating of vehicles fails: vans and trailers are no warmer than outdoors, a hold is as an
   * unheated one. Legs are known by the situation that they took their air from.
   */
  record UnheatedVehicle() implements Mishap {
    private static final List<Situation> FOLLOWING = List.of(Situations.VAN, Situations.TRAILER);

    @Override
    public Remedy.Shipment applyTo(Parcel parcel, Journey journey) {
      return new Remedy.Shipment(
          parcel,
          withEach(
              journey,
              leg -> {
                double heating = heating(leg);
                return heating == 0 ? leg : leg.in(leg.surroundings().warmer(-heating));
              }));
    }

    /** How much warmer heating keeps a leg [K]. */
    private static double heating(Leg leg) {
      for (Situation each : FOLLOWING) {
        if (leg.source().equals(each.source())
            && each.rule() instanceof AmbientRule.Following following) {
          return following.offset();
        }
      }
      return leg.source().equals(Situations.AIRCRAFT_HOLD.source())
              && Situations.AIRCRAFT_HOLD.rule() instanceof AmbientRule.Held heated
              && Situations.COLD_HOLD.rule() instanceof AmbientRule.Held unheated
          ? heated.temperature() - unheated.temperature()
          : 0;
    }

    @Override
    public String words(UnitWords units) {
      return "no heating in the vehicles";
    }

    @Override
    public Concern kind() {
      return Concern.VEHICLE;
    }
  }

  /**
   * In the sun as on an apron, as near to midday as a leg allows: the one given, else one that the
   * weather reaches; on a journey without such a leg, any. The leg lasts no longer; its air stays,
   * and moves as on an apron.
   *
   * @param lasting how long [s], above 0
   * @param leg position of the leg; empty for any
   */
  record SunOnLid(double lasting, OptionalInt leg) implements Mishap {
    /** A clear sky at a middle latitude, on the level: assumed [W/m2]. */
    public static final double IRRADIANCE = 800;

    /** What is usual [s]. */
    private static final double USUAL = 2 * Times.HOUR;

    private static final double STEP = 0.5 * Times.HOUR;
    private static final double MIDDAY = 13;

    /** Farther from midday there is no such sun [h]. */
    private static final double FARTHEST = 4;

    /** The shortest leg [s]. */
    private static final double SHORTEST = Times.MINUTE;

    /** When the sun comes. */
    private record Moment(int leg, double into, double fromMidday) {}

    /**
     * Checks the parts.
     *
     * @throws InvalidInputException if the time is not above 0
     */
    public SunOnLid {
      Checks.positive("time in the sun", lasting, "s");
      Checks.given("leg", leg);
    }

    /** Two hours in any leg. */
    public SunOnLid() {
      this(USUAL, OptionalInt.empty());
    }

    @Override
    public Remedy.Shipment applyTo(Parcel parcel, Journey journey) {
      Moment best = moment(journey);
      List<Leg> legs = new ArrayList<>(journey.legs());
      Leg split = legs.remove(best.leg());
      legs.addAll(best.leg(), inSun(split, best.into(), lasting));
      return new Remedy.Shipment(
          parcel, new Journey(journey.sealing(), journey.startTemperature(), legs));
    }

    private Moment moment(Journey journey) {
      Moment best = new Moment(0, 0, Double.POSITIVE_INFINITY);
      for (int leg : legsToTry(journey)) {
        Leg each = journey.legs().get(leg);
        for (double into = 0; into + lasting <= each.duration(); into += STEP) {
          double left = each.duration() - into - lasting;
          if (left > 0 && left < SHORTEST) {
            continue;
          }
          double middle = journey.start(leg) + into + lasting / 2;
          double hour =
              Times.toHours(journey.localClock(middle, leg).toLocalTime().toSecondOfDay());
          double away = Math.abs(hour - MIDDAY);
          if (away < best.fromMidday()) {
            best = new Moment(leg, into, away);
          }
        }
      }
      if (best.fromMidday() > FARTHEST) {
        throw new InvalidInputException(
            hours() + " in the sun",
            this.leg.isPresent()
                ? "must lie by day, between 9:00 and 17:00, within the "
                    + Checks.show(
                        Times.toHours(journey.legs().get(this.leg.getAsInt()).duration()), "h")
                    + " that the leg lasts as planned; for more, let it last longer"
                : "find no leg by day that is long enough");
      }
      return best;
    }

    private List<Integer> legsToTry(Journey journey) {
      if (leg.isPresent()) {
        return List.of(existing(leg.getAsInt(), journey));
      }
      boolean known = journey.legs().stream().anyMatch(Mishap::followsWeather);
      return IntStream.range(0, journey.legs().size())
          .filter(each -> !known || followsWeather(journey.legs().get(each)))
          .boxed()
          .toList();
    }

    private String hours() {
      return lasting == USUAL ? "two hours" : Checks.show(Times.toHours(lasting), "h");
    }

    private static List<Leg> inSun(Leg leg, double before, double lasting) {
      List<Leg> parts = new ArrayList<>();
      if (before > 0) {
        parts.add(new Leg(leg.name(), leg.place(), before, leg.surroundings(), leg.source()));
      }
      Surroundings usual = leg.surroundings();
      Sunshine sun =
          Sunshine.on(Face.Z_MAX, TimeFunction.constant(IRRADIANCE), SolarAbsorptance.KRAFT_BOARD);
      Surroundings sunny =
          new Surroundings(
              usual.ambient(),
              usual.spread(),
              Situations.RAMP.films(),
              Stowage.ALONE,
              usual.orientation(),
              usual.altitude(),
              sun,
              List.of());
      double after = leg.duration() - before - lasting;
      // what a leg is late by comes at its end
      double delay = after > 0 ? 0 : leg.delay();
      parts.add(
          new Leg(
              "sun on the lid",
              leg.place(),
              lasting,
              delay,
              sunny,
              Source.assumed("a clear sky: 800 W/m2 on the lid")));
      if (after > 0) {
        parts.add(leg.lasting(after));
      }
      return parts;
    }

    @Override
    public String words(UnitWords units) {
      return hours() + " of sun on the lid";
    }

    @Override
    public String words(UnitWords units, Journey journey) {
      return words(units) + " in '" + journey.legs().get(moment(journey).leg()).name() + "'";
    }

    @Override
    public Concern kind() {
      return Concern.SUN;
    }
  }

  /**
   * The parcel lies another way all the time.
   *
   * @param orientation how it lies
   */
  record Lying(Orientation orientation) implements Mishap {
    @Override
    public Remedy.Shipment applyTo(Parcel parcel, Journey journey) {
      return new Remedy.Shipment(
          parcel, withEach(journey, leg -> leg.in(leg.surroundings().lying(orientation))));
    }

    @Override
    public String words(UnitWords units) {
      return orientation.words();
    }

    @Override
    public Concern kind() {
      return Concern.LIE;
    }
  }

  /** Packed without fill. */
  record NoFill() implements Mishap {
    @Override
    public Remedy.Shipment applyTo(Parcel parcel, Journey journey) {
      return new Remedy.Shipment(
          parcel.filling().fill().isPresent() ? parcel.withFilling(Filling.none()) : parcel,
          journey);
    }

    @Override
    public String words(UnitWords units) {
      return "no fill";
    }

    @Override
    public Concern kind() {
      return Concern.FILL;
    }
  }

  /** The first warmer comes off and lies on a cup, or where there is no room above against one. */
  record LooseWarmer() implements Mishap {
    @Override
    public Remedy.Shipment applyTo(Parcel parcel, Journey journey) {
      if (parcel.warmers().isEmpty()) {
        return new Remedy.Shipment(parcel, journey);
      }
      PlacedWarmer first = parcel.warmers().get(0);
      WarmerClass.PadSize size = first.warmer().size();
      Dimensions pad = new Dimensions(size.length(), size.width(), size.thickness());
      return new Remedy.Shipment(
          besideAnimal(
              "a loose warmer",
              parcel,
              pad,
              there -> parcel.withWarmers(withFirst(parcel.warmers(), first.at(there)))),
          journey);
    }

    @Override
    public String words(UnitWords units) {
      return "the warmer loose beside the animal";
    }

    @Override
    public Concern kind() {
      return Concern.WARMER;
    }
  }

  /** No warmer gives heat. */
  record DeadWarmer() implements Mishap {
    @Override
    public Remedy.Shipment applyTo(Parcel parcel, Journey journey) {
      // one that is opened long after the journey is dead in it
      double never = journey.duration() + Times.fromDays(60);
      return new Remedy.Shipment(eachWarmer(parcel, each -> each.openedAt(never)), journey);
    }

    @Override
    public String words(UnitWords units) {
      return "the warmer dead";
    }

    @Override
    public Concern kind() {
      return Concern.WARMER;
    }
  }

  /** The film of the warmers is taped over. A warmer that needs no air does not notice. */
  record CoveredFilm() implements Mishap {
    @Override
    public Remedy.Shipment applyTo(Parcel parcel, Journey journey) {
      return new Remedy.Shipment(
          eachWarmer(
              parcel,
              each ->
                  each.warmer().heat() instanceof IronPowder
                      ? each.covered(FilmCover.TAPED_OVER)
                      : each),
          journey);
    }

    @Override
    public String words(UnitWords units) {
      return "the warmer's film taped over";
    }

    @Override
    public Concern kind() {
      return Concern.WARMER;
    }
  }

  /** The first pack comes off and lies on a cup, or where there is no room above against one. */
  record LoosePack() implements Mishap {
    @Override
    public Remedy.Shipment applyTo(Parcel parcel, Journey journey) {
      if (parcel.packs().isEmpty()) {
        return new Remedy.Shipment(parcel, journey);
      }
      PlacedPack first = parcel.packs().get(0);
      return new Remedy.Shipment(
          besideAnimal(
              "a loose pack",
              parcel,
              first.pack().size(),
              there -> parcel.withPacks(withFirst(parcel.packs(), first.at(there)))),
          journey);
    }

    @Override
    public String words(UnitWords units) {
      return "the pack loose beside the animal";
    }

    @Override
    public Concern kind() {
      return Concern.PACK;
    }
  }

  /** Packs meant to be frozen through are half melted when the parcel is sealed. */
  record HalfFrozenPack() implements Mishap {
    private static final PackStart HALF = new PackStart.PartlyMelted(0.5);

    @Override
    public Remedy.Shipment applyTo(Parcel parcel, Journey journey) {
      return new Remedy.Shipment(
          parcel.withPacks(
              parcel.packs().stream()
                  .map(each -> isFrozen(each) ? each.starting(HALF) : each)
                  .toList()),
          journey);
    }

    private static boolean isFrozen(PlacedPack placed) {
      return placed.start() instanceof PackStart.AtTemperature && placed.leftToMelt().isPresent();
    }

    @Override
    public String words(UnitWords units) {
      return "the pack only half frozen";
    }

    @Override
    public Concern kind() {
      return Concern.PACK;
    }
  }

  /** The packs are not in the box. */
  record ForgottenPack() implements Mishap {
    @Override
    public Remedy.Shipment applyTo(Parcel parcel, Journey journey) {
      return new Remedy.Shipment(parcel.withPacks(List.of()), journey);
    }

    @Override
    public String words(UnitWords units) {
      return "the pack forgotten";
    }

    @Override
    public Concern kind() {
      return Concern.PACK;
    }
  }

  /** Seams and holes are all taped or blocked. */
  record BlockedOpenings() implements Mishap {
    @Override
    public Remedy.Shipment applyTo(Parcel parcel, Journey journey) {
      return new Remedy.Shipment(parcel.withOpenings(new Openings(0, List.of())), journey);
    }

    @Override
    public String words(UnitWords units) {
      return "seams and holes blocked";
    }

    @Override
    public Concern kind() {
      return Concern.OPENINGS;
    }
  }

  /**
   * What a user adds.
   *
   * @param words what happens
   * @param change what it changes; must be thread-safe
   * @param concerns kinds whose other mishaps do not happen beside it; may be empty
   */
  record Own(
      String words, BiFunction<Parcel, Journey, Remedy.Shipment> change, Set<Concern> concerns)
      implements Mishap {
    /**
     * Checks the parts.
     *
     * @throws InvalidInputException if the words are blank
     */
    public Own {
      Checks.name("mishap", words);
      Checks.given("change", change);
      concerns = Set.copyOf(concerns);
    }

    /**
     * What may happen beside any other.
     *
     * @param words what happens
     * @param change what it changes; must be thread-safe
     */
    public Own(String words, BiFunction<Parcel, Journey, Remedy.Shipment> change) {
      this(words, change, Set.of());
    }

    /**
     * Several things that happen together.
     *
     * @param words what happens
     * @param parts them, in the order in which they happen; sun, which divides its leg, last
     * @return one mishap
     * @throws InvalidInputException if there is none
     */
    public static Own together(String words, List<Mishap> parts) {
      List<Mishap> all = Checks.notEmpty("parts of '" + words + "'", parts);
      return new Own(
          words,
          (parcel, journey) -> {
            Remedy.Shipment after = new Remedy.Shipment(parcel, journey);
            for (Mishap each : all) {
              after = each.applyTo(after.parcel(), after.journey());
            }
            return after;
          },
          all.stream().flatMap(each -> each.concerns().stream()).collect(Collectors.toSet()));
    }

    @Override
    public Remedy.Shipment applyTo(Parcel parcel, Journey journey) {
      return change.apply(parcel, journey);
    }

    @Override
    public String words(UnitWords units) {
      return words;
    }

    @Override
    public Concern kind() {
      return Concern.OWN;
    }
  }

  private static <T> List<T> withFirst(List<T> all, T first) {
    List<T> changed = new ArrayList<>(all);
    changed.set(0, first);
    return changed;
  }

  /**
   * Puts a flat thing on a cup with an animal, or where there is no room above against one.
   *
   * @param what what messages call it
   * @param moved makes the packing in which it lies there
   */
  private static Parcel besideAnimal(
      String what, Parcel parcel, Dimensions size, Function<Placement, Parcel> moved) {
    for (Face side : List.of(Face.Z_MAX, Face.X_MAX, Face.X_MIN, Face.Y_MAX, Face.Y_MIN)) {
      for (Container cup : parcel.occupied()) {
        try {
          return moved.apply(against(parcel.cavity(), parcel.room(cup), side, size));
        } catch (InvalidInputException taken) {
          // the next side may be free
        }
      }
    }
    throw new InvalidInputException(what, "finds no room beside a cup");
  }

  /** Flat against a side of a cup, at its middle as far as the cavity has room. */
  private static Placement against(Box cavity, Box cup, Face side, Dimensions size) {
    Axis normal = side.axis();
    Box lying = new Placement.InCavity(Position.MIDDLE_OF_FLOOR, normal).box(size, cavity);
    double[] shift = {
      cup.centre().x() - cavity.centre().x(),
      cup.centre().y() - cavity.centre().y(),
      cup.centre().z() - lying.centre().z()
    };
    for (Axis axis : Axis.values()) {
      int number = axis.ordinal();
      if (axis == normal) {
        double apart = (cup.size(axis) + lying.size(axis)) / 2;
        shift[number] += side.isMax() ? apart : -apart;
      } else {
        double under = cavity.at(Face.of(axis, false)) - lying.at(Face.of(axis, false));
        double over = cavity.at(Face.of(axis, true)) - lying.at(Face.of(axis, true));
        shift[number] = Math.max(under, Math.min(over, shift[number]));
      }
    }
    return new Placement.InCavity(new Position(shift[0], shift[1], Math.max(0, shift[2])), normal);
  }

  private static int existing(int leg, Journey journey) {
    if (leg < 0 || leg >= journey.legs().size()) {
      throw new InvalidInputException(
          "leg", "there is no leg " + leg + "; the last is " + (journey.legs().size() - 1));
    }
    return leg;
  }

  private static boolean followsWeather(Leg leg) {
    return leg.surroundings().spread().outdoors() > 0;
  }

  private static Journey withEach(Journey journey, UnaryOperator<Leg> change) {
    return new Journey(
        journey.sealing(),
        journey.startTemperature(),
        journey.legs().stream().map(change).toList());
  }

  private static Parcel eachWarmer(Parcel parcel, UnaryOperator<PlacedWarmer> change) {
    return parcel.withWarmers(parcel.warmers().stream().map(change).toList());
  }
}
