package stenotherm.decision;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.DoubleUnaryOperator;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;
import java.util.function.UnaryOperator;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import stenotherm.ambient.AirMovement;
import stenotherm.ambient.Stowage;
import stenotherm.animal.Limit;
import stenotherm.base.Axis;
import stenotherm.base.Checks;
import stenotherm.base.Face;
import stenotherm.base.InvalidInputException;
import stenotherm.base.Range;
import stenotherm.base.Source;
import stenotherm.base.Times;
import stenotherm.grid.Box;
import stenotherm.journey.Journey;
import stenotherm.journey.Leg;
import stenotherm.journey.Surroundings;
import stenotherm.material.Materials;
import stenotherm.parcel.Container;
import stenotherm.parcel.Dimensions;
import stenotherm.parcel.Filling;
import stenotherm.parcel.FilmCover;
import stenotherm.parcel.LidHoles;
import stenotherm.parcel.Mounting;
import stenotherm.parcel.Openings;
import stenotherm.parcel.PackClass;
import stenotherm.parcel.PackStart;
import stenotherm.parcel.Parcel;
import stenotherm.parcel.PlacedPack;
import stenotherm.parcel.PlacedWarmer;
import stenotherm.parcel.Placement;
import stenotherm.parcel.Vent;
import stenotherm.parcel.WallLayer;
import stenotherm.parcel.Walls;
import stenotherm.warmer.IronPowder;
import stenotherm.warmer.WarmerClass;
import stenotherm.warmer.Warmers;

/**
 * One thing that a keeper can change about a shipment.
 *
 * <p>Experimental. Values, thus thread-safe.
 */
public sealed interface Remedy {
  /**
   * A packing and its journey.
   *
   * @param parcel the packing
   * @param journey the journey
   */
  record Shipment(Parcel parcel, Journey journey) {}

  /**
   * Makes the change.
   *
   * @param parcel the packing
   * @param journey its journey
   * @return both, one of them changed
   * @throws stenotherm.base.InvalidInputException if the changed packing does not fit together
   */
  Shipment applyTo(Parcel parcel, Journey journey);

  /**
   * Says what to do.
   *
   * @param units writes quantities in the reader's units
   * @return for example "19 mm more of foam on all sides, in a box larger by as much"
   */
  String words(UnitWords units);

  /** What a change is about: two about the same are not made together. */
  enum Subject {
    /** Thickness of the walls. */
    FOAM,
    /** What fills the room. */
    FILL,
    /** How much room there is. */
    ROOM,
    /** Which warmers, where, and how covered. */
    WARMER,
    /** One more of them. */
    SECOND_WARMER,
    /** When warmers are opened. */
    OPENING,
    /** Ways for air. */
    AIR,
    /** Something cold beside the animal that is there. */
    COLD,
    /** A pouch of water that is added, cold or as ballast. */
    POUCH,
    /** Temperature at packing. */
    START,
    /** The end of the journey. */
    DELIVERY
  }

  /**
   * Tells what it is about.
   *
   * @return one of the things that a keeper can change
   */
  Subject subject();

  /**
   * Lists the single changes that it is made of.
   *
   * @return itself, or those of {@link Both}
   */
  default List<Remedy> parts() {
    return List.of(this);
  }

  /**
   * Lists the changes to try.
   *
   * @param parcel the packing
   * @param journey its journey
   * @return changes of foam, warmer, something chilled, temperature at packing and delivery; some
   *     may not fit
   */
  static List<Remedy> toTry(Parcel parcel, Journey journey) {
    List<Remedy> all = new ArrayList<>();
    all.add(new ThickerFoam());
    if (ThinnerFoam.isFoamed(parcel)) {
      all.add(new ThinnerFoam());
    }
    if (!parcel.warmers().isEmpty()) {
      all.add(new NoWarmer());
    }
    for (WarmerClass each : Warmers.all()) {
      if (parcel.warmers().stream().noneMatch(placed -> placed.warmer().equals(each))) {
        all.add(new OtherWarmer(each));
      }
    }
    if (parcel.warmers().isEmpty()) {
      all.add(new Both(new OtherWarmer(Warmers.FORTY_HOUR), new HalfTaped()));
      all.add(new Both(new LargerBox(), new OtherWarmer(Warmers.FORTY_HOUR)));
    } else {
      all.add(new LargerBox());
    }
    for (Face face : Face.values()) {
      // on the floor a cup may come to lie on it
      boolean there = parcel.warmers().stream().anyMatch(placed -> isOn(face, placed));
      if (!parcel.warmers().isEmpty() && face != Face.Z_MIN && !there) {
        all.add(new WarmerOn(face));
      }
    }
    if (parcel.warmers().size() == 1) {
      SecondWarmer.beside(parcel).ifPresent(all::add);
    }
    if (parcel.packs().isEmpty()) {
      all.add(new ChilledPack());
      all.add(new Ballast());
    } else {
      all.add(new NoPack());
    }
    if (parcel.packs().size() == 1) {
      all.add(new TwicePack());
    }
    if (parcel.packs().stream().anyMatch(FromRefrigerator::changes)) {
      all.add(new FromRefrigerator());
    }
    if (parcel.packs().stream().anyMatch(PackOnLid::changes)) {
      all.add(new PackOnLid());
    }
    if (parcel.warmers().stream().anyMatch(placed -> placed.placement().onWall().isPresent())) {
      all.add(new WarmerOffWall(WarmerOffWall.USUAL));
    }
    if (parcel.warmers().stream().anyMatch(Remedy::burns)) {
      all.addAll(waysForAir(parcel));
    }
    if (HalfTaped.fits(parcel)) {
      all.add(new HalfTaped());
    }
    if (parcel.warmers().stream().anyMatch(OpenedEarlier::changes)) {
      all.add(new OpenedEarlier());
    }
    for (double kelvin : new double[] {-StartAt.STEP, StartAt.STEP}) {
      double start = journey.startTemperature() + kelvin;
      boolean comfortable =
          parcel.occupied().stream()
              .allMatch(
                  cup ->
                      cup.occupant()
                          .orElseThrow()
                          .animal()
                          .tolerance()
                          .band(Limit.COMFORTABLE)
                          .range()
                          .contains(start));
      if (comfortable) {
        all.add(new StartAt(start));
      }
    }
    List<Leg> legs = journey.legs();
    Leg last = legs.get(legs.size() - 1);
    if (legs.size() > 1 && isOutside(last.surroundings())) {
      all.add(new HandedOver(last.name()));
    }
    Fetched.before(legs).ifPresent(all::add);
    return all;
  }

  /** Where a parcel waits in the wind: nobody can take it in from within a van. */
  private static boolean isOutside(Surroundings last) {
    return last.spread().outdoors() > 0 && last.films().movement() instanceof AirMovement.Moving;
  }

  /**
   * Lists changes that let air in.
   *
   * @param parcel the packing as it is
   * @return the changes, the one that costs least first
   */
  static List<Remedy> waysForAir(Parcel parcel) {
    List<Remedy> ways = new ArrayList<>();
    if (parcel.containers().stream().anyMatch(HolesInLids::lacks)) {
      ways.add(new HolesInLids());
    }
    if (parcel.openings().seamGap() == 0) {
      ways.add(new SeamsLeftOpen());
    }
    ways.add(new MoreAir());
    return ways;
  }

  /** As many holes as usual in the lids of containers that have fewer, or smaller ones. */
  record HolesInLids() implements Remedy {
    private static boolean lacks(Container cup) {
      return cup.occupant().isPresent() && cup.vessel().hasFewHoles();
    }

    @Override
    public String words(UnitWords units) {
      return LidHoles.USUAL.count()
          + " holes of "
          + units.length(LidHoles.USUAL.diameter())
          + " in the lid of each container that has less";
    }

    @Override
    public Subject subject() {
      return Subject.AIR;
    }

    @Override
    public Shipment applyTo(Parcel parcel, Journey journey) {
      List<Container> holed =
          parcel.containers().stream()
              .map(cup -> lacks(cup) ? cup.with(LidHoles.USUAL) : cup)
              .toList();
      return new Shipment(parcel.withContainers(holed), journey);
    }
  }

  /** Seams that fit, without the tape on them. */
  record SeamsLeftOpen() implements Remedy {
    @Override
    public String words(UnitWords units) {
      return "no tape along the seams of box and lid";
    }

    @Override
    public Subject subject() {
      return Subject.AIR;
    }

    @Override
    public Shipment applyTo(Parcel parcel, Journey journey) {
      Openings open = new Openings(Openings.CLOSED_GAP, parcel.openings().vents());
      return new Shipment(parcel.withOpenings(open), journey);
    }
  }

  /**
   * Holes through which a warmer and an animal breathe, in the lid and in the front.
   *
   * @param each how many in each of the two, 1 or 2
   */
  record MoreAir(int each) implements Remedy {
    /** What a pencil makes [m]. */
    private static final double DIAMETER = 0.006;

    private static final Range COUNTS = new Range(1, 2);

    /**
     * Checks the number.
     *
     * @throws InvalidInputException if it is not 1 or 2
     */
    public MoreAir {
      Checks.within("holes in each face", each, COUNTS, "", "More weaken a box.");
    }

    /** One in each. */
    public MoreAir() {
      this(1);
    }

    @Override
    public String words(UnitWords units) {
      return (each == 1 ? "two" : "four")
          + " holes of "
          + units.length(DIAMETER)
          + " through board and foam, "
          + (each == 1 ? "one in the lid and one" : "two in the lid and two")
          + " in a side, not behind a warmer";
    }

    @Override
    public Subject subject() {
      return Subject.AIR;
    }

    @Override
    public Shipment applyTo(Parcel parcel, Journey journey) {
      Openings more =
          parcel
              .openings()
              .with(new Vent(Face.Z_MAX, each, DIAMETER))
              .with(new Vent(Face.Y_MIN, each, DIAMETER));
      return new Shipment(parcel.withOpenings(more), journey);
    }
  }

  private static boolean isOn(Face face, PlacedWarmer placed) {
    return placed.placement().onWall().filter(wall -> wall.face() == face).isPresent();
  }

  private static boolean burns(PlacedWarmer placed) {
    return placed.warmer().heat() instanceof IronPowder;
  }

  /** One more panel of foam behind each wall, in a box that is larger by as much. */
  record ThickerFoam() implements Remedy {
    /** The panel that is sold most: 3/4 in [m]. */
    private static final double PANEL = 0.01905;

    @Override
    public String words(UnitWords units) {
      return units.length(PANEL) + " more of foam on all sides, in a box larger by as much";
    }

    @Override
    public Subject subject() {
      return Subject.FOAM;
    }

    @Override
    public Shipment applyTo(Parcel parcel, Journey journey) {
      return new Shipment(withFoam(parcel, each -> each + PANEL), journey);
    }
  }

  /** Half as much foam behind each wall, in a box that is smaller by as much. */
  record ThinnerFoam() implements Remedy {
    /** Tells whether each wall has foam. */
    static boolean isFoamed(Parcel parcel) {
      return Arrays.stream(Face.values())
          .allMatch(face -> firstFoam(parcel.walls().layersOf(face)).isPresent());
    }

    @Override
    public String words(UnitWords units) {
      return "foam half as thick on all sides, in a box smaller by as much";
    }

    @Override
    public Subject subject() {
      return Subject.FOAM;
    }

    @Override
    public Shipment applyTo(Parcel parcel, Journey journey) {
      return new Shipment(withFoam(parcel, each -> each / 2), journey);
    }
  }

  /**
   * A higher, longer or wider box, with more fill between cups and the warmers on its lid or sides.
   *
   * @param along the axis along which there is more room
   * @param more by how much [m]
   */
  record MoreRoom(Axis along, double more) implements Remedy {
    /** What is to lie between a warmer and a cup [m]: 2 in, common practice, no source. */
    private static final double ENOUGH = 0.0508;

    /** What a box is larger by comes in half inches [m]. */
    private static final double STEP = 0.0127;

    /**
     * Checks the room.
     *
     * @throws InvalidInputException if it is not above 0
     */
    public MoreRoom {
      Checks.given("axis", along);
      Checks.positive("more room", more, "m");
    }

    /**
     * For warmers on the lid or a side that lie too near to a cup.
     *
     * @param parcel the packing
     * @param mostly whether most journeys show it: then as much as it takes until enough lies
     *     between, else a step, as what is farther warms less
     * @return the change; empty if no warmer is too near
     */
    static Optional<MoreRoom> before(Parcel parcel, boolean mostly) {
      return parcel.warmers().stream()
          .filter(warmer -> warmer.placement() instanceof Placement.OnFace)
          .map(warmer -> before(parcel, warmer, mostly))
          .flatMap(Optional::stream)
          .max(Comparator.comparingDouble(MoreRoom::more));
    }

    private static Optional<MoreRoom> before(Parcel parcel, PlacedWarmer warmer, boolean mostly) {
      Face face = ((Placement.OnFace) warmer.placement()).face();
      if (face == Face.Z_MIN) {
        return Optional.empty();
      }
      Box pad = parcel.layout().block(warmer.name()).box();
      double least =
          parcel.occupied().stream()
              .mapToDouble(cup -> distance(face, pad, parcel.room(cup)))
              .min()
              .orElse(ENOUGH);
      // a box that is longer grows at both ends: half of it comes to lie before the warmer
      double share = face.axis() == Axis.Z ? 1 : 0.5;
      // what lacks less than a tenth of a millimetre does not
      double steps = Math.ceil((ENOUGH - least - 1e-4) / (share * STEP));
      return steps > 0
          ? Optional.of(new MoreRoom(face.axis(), mostly ? steps * STEP : STEP / share))
          : Optional.empty();
    }

    /** With as much more as another one has, or the larger of two along different axes. */
    MoreRoom with(MoreRoom other) {
      if (other.along == along) {
        return new MoreRoom(along, more + other.more);
      }
      return other.more > more ? other : this;
    }

    /** From the inner side of what lies on a face to a cup. */
    private static double distance(Face face, Box pad, Box cup) {
      return face.isMax()
          ? pad.at(face.opposite()) - cup.at(face)
          : cup.at(face) - pad.at(face.opposite());
    }

    @Override
    public String words(UnitWords units) {
      String larger =
          switch (along) {
            case X -> " longer";
            case Y -> " wider";
            case Z -> " higher";
          };
      return "the box "
          + units.length(more)
          + larger
          + " inside, with more fill between warmer and cup";
    }

    @Override
    public Subject subject() {
      return Subject.ROOM;
    }

    @Override
    public Shipment applyTo(Parcel parcel, Journey journey) {
      return new Shipment(
          enclosed(parcel, parcel.walls(), axis -> axis == along ? more : 0), journey);
    }
  }

  /** The next larger box as cartons are sold, filled as before: a warmer in it warms less. */
  record LargerBox() implements Remedy {
    /** Of 8 x 8 x 7 in to 10 x 10 x 8 in [m]: common practice, no source. */
    private static final double WIDER = 0.0508;

    private static final double HIGHER = 0.0254;

    @Override
    public String words(UnitWords units) {
      return "a box "
          + units.length(WIDER)
          + " longer and wider and "
          + units.length(HIGHER)
          + " higher, filled as before";
    }

    @Override
    public Subject subject() {
      return Subject.ROOM;
    }

    @Override
    public Shipment applyTo(Parcel parcel, Journey journey) {
      Parcel larger = enclosed(parcel, parcel.walls(), axis -> axis == Axis.Z ? HIGHER : WIDER);
      return new Shipment(larger, journey);
    }
  }

  /** Position of the foam in a wall. */
  private static OptionalInt firstFoam(List<WallLayer> layers) {
    return IntStream.range(0, layers.size())
        .filter(each -> PackingChoice.isFoam(layers.get(each)))
        .findFirst();
  }

  /** The same room within walls whose foam has another thickness; 0 stands for none. */
  private static Parcel withFoam(Parcel parcel, DoubleUnaryOperator thickness) {
    Map<Face, List<WallLayer>> walls = new EnumMap<>(Face.class);
    for (Face face : Face.values()) {
      List<WallLayer> layers = new ArrayList<>(parcel.walls().layersOf(face));
      OptionalInt foam = firstFoam(layers);
      if (foam.isPresent()) {
        WallLayer there = layers.get(foam.getAsInt());
        layers.set(
            foam.getAsInt(),
            new WallLayer(there.material(), thickness.applyAsDouble(there.thickness())));
      } else {
        layers.add(new WallLayer(Materials.EPS_20, thickness.applyAsDouble(0)));
      }
      walls.put(face, layers);
    }
    return enclosed(parcel, new Walls(walls, parcel.walls().joints()), axis -> 0);
  }

  /** The same contents within walls around its room, which may be larger along each axis [m]. */
  private static Parcel enclosed(Parcel parcel, Walls walls, ToDoubleFunction<Axis> more) {
    double[] room =
        Arrays.stream(Axis.values())
            .mapToDouble(axis -> parcel.cavity().size(axis) + more.applyAsDouble(axis))
            .toArray();
    Dimensions inner = new Dimensions(room[0], room[1], room[2]);
    return new Parcel(
        parcel.name(),
        walls.around(inner),
        walls,
        parcel.filling(),
        parcel.containers(),
        parcel.warmers(),
        parcel.packs(),
        parcel.openings());
  }

  /**
   * Another fill, or none.
   *
   * @param filling what fills the room
   */
  record OtherFill(Filling filling) implements Remedy {
    /** Checks that it is given. */
    public OtherFill {
      Checks.given("filling", filling);
    }

    @Override
    public String words(UnitWords units) {
      return filling.fill().map(each -> each.name() + " as fill").orElse("no fill");
    }

    @Override
    public Subject subject() {
      return Subject.FILL;
    }

    @Override
    public Shipment applyTo(Parcel parcel, Journey journey) {
      boolean alike = parcel.filling().fill().equals(filling.fill());
      return new Shipment(alike ? parcel : parcel.withFilling(filling), journey);
    }
  }

  /** The warmers left out. */
  record NoWarmer() implements Remedy {
    @Override
    public String words(UnitWords units) {
      return "leave the warmer out";
    }

    @Override
    public Subject subject() {
      return Subject.WARMER;
    }

    @Override
    public Shipment applyTo(Parcel parcel, Journey journey) {
      return new Shipment(parcel.withoutWarmers(), journey);
    }
  }

  /** The packs left out. */
  record NoPack() implements Remedy {
    @Override
    public String words(UnitWords units) {
      return "leave the pack out";
    }

    @Override
    public Subject subject() {
      return Subject.COLD;
    }

    @Override
    public Shipment applyTo(Parcel parcel, Journey journey) {
      return new Shipment(parcel.withPacks(List.of()), journey);
    }
  }

  /** Twice as much of a pack, in its place. */
  record TwicePack() implements Remedy {
    @Override
    public String words(UnitWords units) {
      return "a pack twice as thick, or two such packs, one on the other";
    }

    @Override
    public Subject subject() {
      return Subject.COLD;
    }

    @Override
    public Shipment applyTo(Parcel parcel, Journey journey) {
      return new Shipment(withPacks(parcel, each -> true, TwicePack::twice), journey);
    }

    private static PlacedPack twice(PlacedPack placed) {
      PackClass one = placed.pack();
      Dimensions size = one.size();
      Dimensions thicker = new Dimensions(size.length(), size.width(), 2 * size.height());
      PackClass two =
          new PackClass(
              one.name(), one.contents(), thicker, 2 * one.mass(), one.wrap(), one.source());
      return placed.with(two);
    }
  }

  /** Packs that lie loose, on a container or in the fill, taped under the lid instead. */
  record PackOnLid() implements Remedy {
    private static boolean changes(PlacedPack placed) {
      return placed.placement() instanceof Placement.InCavity;
    }

    @Override
    public String words(UnitWords units) {
      return "the pack taped under the lid";
    }

    @Override
    public Subject subject() {
      return Subject.COLD;
    }

    @Override
    public Shipment applyTo(Parcel parcel, Journey journey) {
      Placement lid = Placement.onFace(Face.Z_MAX, Mounting.taped());
      return new Shipment(withPacks(parcel, PackOnLid::changes, each -> each.at(lid)), journey);
    }
  }

  /** Packs chilled in a refrigerator, not frozen. */
  record FromRefrigerator() implements Remedy {
    private static final PackStart CHILLED = new PackStart.AtTemperature(ChilledPack.CHILLED);

    /** Those that are frozen and that a refrigerator thaws. */
    private static boolean changes(PlacedPack placed) {
      return placed
          .leftToMelt()
          .filter(melting -> melting.range().high() < ChilledPack.CHILLED)
          .isPresent();
    }

    @Override
    public String words(UnitWords units) {
      return "the pack from the refrigerator, not frozen";
    }

    @Override
    public Subject subject() {
      return Subject.COLD;
    }

    @Override
    public Shipment applyTo(Parcel parcel, Journey journey) {
      return new Shipment(
          withPacks(parcel, FromRefrigerator::changes, each -> each.starting(CHILLED)), journey);
    }
  }

  /**
   * Another class of warmer; where there is none, one taped under the lid, opened as usual.
   *
   * @param warmer the class
   */
  record OtherWarmer(WarmerClass warmer) implements Remedy {
    @Override
    public String words(UnitWords units) {
      return "a " + warmer.name();
    }

    @Override
    public Subject subject() {
      return Subject.WARMER;
    }

    @Override
    public Shipment applyTo(Parcel parcel, Journey journey) {
      Parcel changed =
          parcel.warmers().isEmpty()
              ? parcel.withWarmers(
                  List.of(
                      new PlacedWarmer(
                          "warmer",
                          warmer,
                          Face.Z_MAX,
                          Mounting.taped(),
                          PlacedWarmer.USUALLY_OPENED)))
              : withEach(parcel, each -> each.with(warmer));
      return new Shipment(changed, journey);
    }
  }

  /**
   * The warmers taped to the middle of another face.
   *
   * @param face the face
   */
  record WarmerOn(Face face) implements Remedy {
    @Override
    public String words(UnitWords units) {
      return "the warmer taped to the " + face.words();
    }

    @Override
    public Subject subject() {
      return Subject.WARMER;
    }

    @Override
    public Shipment applyTo(Parcel parcel, Journey journey) {
      Placement there = Placement.onFace(face, Mounting.taped());
      Parcel changed = withEach(parcel, each -> each.at(there));
      WarmerPlacing.requireApart(changed);
      return new Shipment(changed, journey);
    }
  }

  /**
   * A second warmer of the same kind on another wall, opened and covered as the first.
   *
   * @param face the wall
   */
  record SecondWarmer(Face face) implements Remedy {
    /** On the wall across from the first one; beside one on the lid where the box is longest. */
    static Optional<SecondWarmer> beside(Parcel parcel) {
      boolean isLong = parcel.cavity().size(Axis.X) >= parcel.cavity().size(Axis.Y);
      return parcel.warmers().get(0).placement() instanceof Placement.OnFace there
          ? Optional.of(
              new SecondWarmer(
                  there.face().axis() != Axis.Z
                      ? there.face().opposite()
                      : isLong ? Face.X_MIN : Face.Y_MAX))
          : Optional.empty();
    }

    @Override
    public String words(UnitWords units) {
      return "a second warmer of the same kind, taped to the " + face.words();
    }

    @Override
    public Subject subject() {
      return Subject.SECOND_WARMER;
    }

    @Override
    public Shipment applyTo(Parcel parcel, Journey journey) {
      if (parcel.warmers().size() != 1) {
        throw new InvalidInputException(
            "packing '" + parcel.name() + "'",
            "has " + parcel.warmers().size() + " warmers, to which no second one is added");
      }
      PlacedWarmer first = parcel.warmers().get(0);
      PlacedWarmer second =
          new PlacedWarmer(
              first.name() + " 2",
              first.warmer(),
              Placement.onFace(face, Mounting.taped()),
              first.opened(),
              first.cover());
      Parcel changed = parcel.withWarmers(List.of(first, second));
      WarmerPlacing.requireApart(changed);
      return new Shipment(changed, journey);
    }
  }

  /**
   * The warmers held off their walls by a spacer.
   *
   * @param gap the gap [m]
   */
  record WarmerOffWall(double gap) implements Remedy {
    private static final double USUAL = 0.01;

    @Override
    public String words(UnitWords units) {
      return "the warmer held " + units.length(gap) + " off its wall";
    }

    @Override
    public Subject subject() {
      return Subject.WARMER;
    }

    @Override
    public Shipment applyTo(Parcel parcel, Journey journey) {
      return new Shipment(withEach(parcel, each -> each.at(offWall(each))), journey);
    }

    private Placement offWall(PlacedWarmer warmer) {
      return warmer
          .placement()
          .onWall()
          .<Placement>map(
              wall ->
                  new Placement.OnFace(
                      wall.face(),
                      wall.alongFirst(),
                      wall.alongSecond(),
                      Mounting.standingOff(gap)))
          .orElse(warmer.placement());
    }
  }

  /** Something cold under the lid that is not frozen; odds tell whether it chills the animal. */
  record ChilledPack() implements Remedy {
    /** A quarter of a litre, flat [m]: assumed. */
    private static final Dimensions SIZE = new Dimensions(0.13, 0.10, 0.02);

    /** Of a refrigerator [K]: 5 °C, common practice, no source. */
    private static final double CHILLED = 278.15;

    private static final PackClass POUCH = pouchOfWater("a quarter of a litre", SIZE);

    @Override
    public String words(UnitWords units) {
      return "a pouch of water of "
          + units.size(SIZE.length(), SIZE.width(), SIZE.height())
          + " from the refrigerator, at "
          + units.temperature(CHILLED)
          + " and not frozen, under the lid";
    }

    @Override
    public Subject subject() {
      return Subject.POUCH;
    }

    @Override
    public Shipment applyTo(Parcel parcel, Journey journey) {
      if (!parcel.warmers().isEmpty()) {
        throw new InvalidInputException(
            "packing '" + parcel.name() + "'",
            "has a warmer, which works against something cold; leave the warmer out first");
      }
      PlacedPack pack =
          new PlacedPack(
              "chilled pouch",
              POUCH,
              Placement.onFace(Face.Z_MAX, Mounting.taped()),
              new PackStart.AtTemperature(CHILLED));
      return new Shipment(withPack(parcel, pack), journey);
    }
  }

  /**
   * Water as warm as all that is packed: a light parcel follows the air within an hour, one with
   * half a litre of water takes some.
   */
  record Ballast() implements Remedy {
    /** Half a litre, flat, 5 x 5 x 1 1/4 in [m]: assumed. */
    private static final Dimensions SIZE = new Dimensions(0.127, 0.127, 0.03175);

    /** Where it may be taped: not on the floor, where the animal stands. */
    private static final List<Face> FACES =
        List.of(Face.Z_MAX, Face.Y_MAX, Face.Y_MIN, Face.X_MAX, Face.X_MIN);

    private static final PackClass POUCH = pouchOfWater("half a litre", SIZE);

    @Override
    public String words(UnitWords units) {
      return "half a litre (17 fl oz) of water as warm as the room, taped under the lid or to a side,"
          + " as ballast";
    }

    @Override
    public Subject subject() {
      return Subject.POUCH;
    }

    @Override
    public Shipment applyTo(Parcel parcel, Journey journey) {
      PackStart start = new PackStart.AtTemperature(journey.startTemperature());
      for (Face face : FACES) {
        if (parcel.warmers().stream().noneMatch(warmer -> isOn(face, warmer))) {
          Placement there = Placement.onFace(face, Mounting.taped());
          try {
            return new Shipment(
                withPack(parcel, new PlacedPack("water", POUCH, there, start)), journey);
          } catch (InvalidInputException taken) {
            // the next wall may have room
          }
        }
      }
      throw new InvalidInputException(
          "packing '" + parcel.name() + "'", "has no wall with room for half a litre of water");
    }
  }

  private static PackClass pouchOfWater(String howMuch, Dimensions size) {
    return new PackClass(
        Materials.WATER.name(),
        Materials.WATER,
        size,
        size.volume() * Materials.WATER.density(),
        0,
        Source.assumed(howMuch + ", full and flat, not wrapped"));
  }

  private static Parcel withPack(Parcel parcel, PlacedPack another) {
    List<PlacedPack> packs = new ArrayList<>(parcel.packs());
    packs.add(another);
    return parcel.withPacks(packs);
  }

  /** The packing with some of its packs changed. */
  private static Parcel withPacks(
      Parcel parcel, Predicate<PlacedPack> which, UnaryOperator<PlacedPack> change) {
    return parcel.withPacks(
        parcel.packs().stream().map(each -> which.test(each) ? change.apply(each) : each).toList());
  }

  /** The packing with each warmer changed; a change of what is not there is refused. */
  private static Parcel withEach(Parcel parcel, UnaryOperator<PlacedWarmer> change) {
    if (parcel.warmers().isEmpty()) {
      throw new InvalidInputException("packing '" + parcel.name() + "'", "has no warmer to change");
    }
    return parcel.withWarmers(parcel.warmers().stream().map(change).toList());
  }

  /** Tape over half of the film through which warmers take their air: they give less heat. */
  record HalfTaped() implements Remedy {
    private static boolean changes(PlacedWarmer placed) {
      return burns(placed) && placed.cover().open() > FilmCover.HALF_TAPED.open();
    }

    /** Whether there is a warmer whose film lies open. */
    static boolean fits(Parcel parcel) {
      return parcel.warmers().stream().anyMatch(HalfTaped::changes);
    }

    @Override
    public String words(UnitWords units) {
      return "the warmer's film half taped over";
    }

    @Override
    public Subject subject() {
      return Subject.WARMER;
    }

    @Override
    public Shipment applyTo(Parcel parcel, Journey journey) {
      return new Shipment(
          withEach(parcel, each -> changes(each) ? each.covered(FilmCover.HALF_TAPED) : each),
          journey);
    }
  }

  /** Warmers opened well before they are packed, so that they are hot at sealing. */
  record OpenedEarlier() implements Remedy {
    /** Common practice, no source [s]. */
    private static final double BEFORE = 2700;

    private static boolean changes(PlacedWarmer placed) {
      return burns(placed) && placed.opened() > -BEFORE;
    }

    @Override
    public String words(UnitWords units) {
      return "the warmer opened " + Math.round(BEFORE / Times.MINUTE) + " min before sealing";
    }

    @Override
    public Subject subject() {
      return Subject.OPENING;
    }

    @Override
    public Shipment applyTo(Parcel parcel, Journey journey) {
      return new Shipment(
          withEach(parcel, each -> changes(each) ? each.openedAt(-BEFORE) : each), journey);
    }
  }

  /**
   * All packed at another temperature, within what is comfortable to the animals.
   *
   * @param temperature temperature at sealing [K]
   */
  record StartAt(double temperature) implements Remedy {
    private static final double STEP = 4;

    @Override
    public String words(UnitWords units) {
      return "everything at " + units.temperature(temperature) + " when packed";
    }

    @Override
    public Subject subject() {
      return Subject.START;
    }

    @Override
    public Shipment applyTo(Parcel parcel, Journey journey) {
      return new Shipment(parcel, new Journey(journey.sealing(), temperature, journey.legs()));
    }
  }

  private static Journey withoutLast(int count, Journey journey) {
    List<Leg> kept = journey.legs().subList(0, journey.legs().size() - count);
    return new Journey(journey.sealing(), journey.startTemperature(), kept);
  }

  /**
   * Taken in at delivery rather than left outside: without the last leg.
   *
   * @param leg name of that leg
   */
  record HandedOver(String leg) implements Remedy {
    @Override
    public String words(UnitWords units) {
      return "have it taken in at once, without '" + leg + "'";
    }

    @Override
    public Subject subject() {
      return Subject.DELIVERY;
    }

    @Override
    public Shipment applyTo(Parcel parcel, Journey journey) {
      return new Shipment(parcel, withoutLast(1, journey));
    }
  }

  /**
   * Held for pick-up where parcels lie among others, rather than brought: without the last legs.
   *
   * @param depot name of the leg that becomes the last one
   * @param without names of the legs after it, at least one
   */
  record Fetched(String depot, List<String> without) implements Remedy {
    /** Legs from which a parcel can be fetched, by their names. */
    private static final Pattern DEPOT =
        Pattern.compile("(?i)\\b(?:depot|counter|station|facility|post office)\\b");

    /**
     * Checks the legs.
     *
     * @throws InvalidInputException if there is none
     */
    public Fetched {
      Checks.given("depot", depot);
      without = Checks.notEmpty("legs left out", without);
    }

    /** Where the last legs of a journey go through the weather, alone, after a depot. */
    static Optional<Fetched> before(List<Leg> legs) {
      int depot = legs.size() - 1;
      while (depot >= 0 && legs.get(depot).surroundings().stowage() == Stowage.ALONE) {
        depot--;
      }
      if (depot < 0 || depot == legs.size() - 1) {
        return Optional.empty();
      }
      List<Leg> after = legs.subList(depot + 1, legs.size());
      boolean areInWeather =
          after.stream().allMatch(leg -> leg.surroundings().spread().outdoors() > 0);
      // a single wait outside is that of HandedOver
      boolean isKnown = after.size() == 1 && isOutside(after.get(0).surroundings());
      // nobody fetches a parcel from a trailer or an aircraft
      boolean isDepot = DEPOT.matcher(legs.get(depot).name()).find();
      return areInWeather && isDepot && !isKnown
          ? Optional.of(new Fetched(legs.get(depot).name(), after.stream().map(Leg::name).toList()))
          : Optional.empty();
    }

    @Override
    public String words(UnitWords units) {
      return "have it held for pick-up and fetch it after '"
          + depot
          + "', without '"
          + String.join("' and '", without)
          + "'";
    }

    @Override
    public Subject subject() {
      return Subject.DELIVERY;
    }

    @Override
    public Shipment applyTo(Parcel parcel, Journey journey) {
      return new Shipment(parcel, withoutLast(without.size(), journey));
    }
  }

  /**
   * Two changes, one after the other.
   *
   * @param first the first
   * @param second the second
   */
  record Both(Remedy first, Remedy second) implements Remedy {
    /** Checks that both are given. */
    public Both {
      Checks.given("first change", first);
      Checks.given("second change", second);
    }

    @Override
    public String words(UnitWords units) {
      return first.words(units) + "; and " + second.words(units);
    }

    /** That of the first. */
    @Override
    public Subject subject() {
      return first.subject();
    }

    @Override
    public List<Remedy> parts() {
      return Stream.concat(first.parts().stream(), second.parts().stream()).toList();
    }

    @Override
    public Shipment applyTo(Parcel parcel, Journey journey) {
      Shipment once = first.applyTo(parcel, journey);
      return second.applyTo(once.parcel(), once.journey());
    }
  }
}
