package stenotherm.validation.agreement;

import static stenotherm.base.Temperatures.fromCelsius;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stenotherm.animal.Animal;
import stenotherm.animal.AnimalBody;
import stenotherm.animal.Animals;
import stenotherm.base.Axis;
import stenotherm.base.Face;
import stenotherm.base.Mass;
import stenotherm.base.Range;
import stenotherm.base.Source;
import stenotherm.base.TimeFunction;
import stenotherm.base.Times;
import stenotherm.grid.Box;
import stenotherm.grid.Shape;
import stenotherm.material.Material;
import stenotherm.material.Materials;
import stenotherm.parcel.Arrangement;
import stenotherm.parcel.Bedding;
import stenotherm.parcel.Container;
import stenotherm.parcel.Dimensions;
import stenotherm.parcel.Filling;
import stenotherm.parcel.Joints;
import stenotherm.parcel.Mounting;
import stenotherm.parcel.Occupant;
import stenotherm.parcel.PackClass;
import stenotherm.parcel.PackStart;
import stenotherm.parcel.Parcel;
import stenotherm.parcel.PlacedPack;
import stenotherm.parcel.PlacedWarmer;
import stenotherm.parcel.Placement;
import stenotherm.parcel.Position;
import stenotherm.parcel.VacuumPanel;
import stenotherm.parcel.Vessel;
import stenotherm.parcel.VesselSizes;
import stenotherm.parcel.WallLayer;
import stenotherm.parcel.Walls;
import stenotherm.warmer.PrescribedPower;
import stenotherm.warmer.WarmerClass;
import stenotherm.warmer.Warmers;

/**
 * A parcel as somebody might pack it, drawn at random: one or two vessels of the catalogue with
 * bedding and an animal each, up to two warmers, a pack that does not melt, a fill, walls. The
 * cavity is made as large as its contents ask for. Nothing melts, so that a linear model can follow
 * it.
 */
final class RandomParcel {
  private static final Source INVENTED = Source.assumed("drawn at random");

  /** Room that a pad on one wall leaves free for one on the next [m]. */
  private static final double CORNER = 0.03;

  private static final List<Material> FOAMS =
      List.of(
          Materials.EPS_20,
          Materials.EPS_15,
          Materials.EPS_30,
          Materials.GRAPHITE_EPS,
          Materials.XPS,
          Materials.PIR,
          Materials.PUR,
          Materials.WOOL_FELT);

  private static final List<Filling> FILLINGS =
      List.of(
          new Filling.Loose(Materials.SHREDDED_PAPER),
          new Filling.Loose(Materials.SHREDDED_PAPER),
          new Filling.Loose(Materials.CRUMPLED_NEWSPAPER),
          new Filling.Loose(Materials.CRUMPLED_NEWSPAPER),
          new Filling.Loose(Materials.WOOD_WOOL),
          new Filling.Loose(Materials.LOOSE_FILL_STARCH),
          new Filling.Loose(Materials.SPHAGNUM_DRY),
          Filling.none());

  /** Where warmers lie. */
  private enum Spot {
    LID,
    SIDE,
    END,
    LOOSE
  }

  /** A warmer and the place drawn for it. */
  private record Pad(WarmerClass warmer, Spot spot, Mounting mounting, double opened) {
    double room() {
      return mounting.standOff() + warmer.size().thickness();
    }

    double longer() {
      return Math.max(warmer.size().length(), warmer.size().width());
    }

    double shorter() {
      return Math.min(warmer.size().length(), warmer.size().width());
    }
  }

  private final Draws draws;
  private final List<Pad> pads = new ArrayList<>();
  private double length;
  private double width;
  private double height;

  private RandomParcel(Draws draws) {
    this.draws = draws;
  }

  /** Draws a parcel. */
  static Parcel of(Draws draws) {
    return new RandomParcel(draws).parcel();
  }

  private Parcel parcel() {
    drawPads();
    Optional<PackClass> pack = draws.chance(0.15) ? Optional.of(bottle()) : Optional.empty();
    List<Container> cups = new ArrayList<>();
    cups.add(cup("cup"));
    if (draws.chance(0.3)) {
      cups.add(draws.chance(0.4) ? cup("second") : another(cups.get(0)));
    }
    double floor = draws.millimetres(0, 40);
    if (pack.isPresent()) {
      floor += pack.get().size().height();
      length = pack.get().size().length() + CORNER;
      width = pack.get().size().width() + CORNER;
    }
    List<Container> placed = arrange(cups, floor);
    double top = height;
    double gap = draws.millimetres(0, 20);
    makeRoom(gap);
    Dimensions inner = new Dimensions(length, width, height);
    Walls walls = walls(inner);
    return new Parcel(
        "random",
        walls.around(inner),
        walls,
        draws.of(FILLINGS),
        placed,
        pads.stream().map(pad -> placed(pad, top + gap)).toList(),
        pack.map(each -> List.of(onFloor(each))).orElse(List.of()));
  }

  private void drawPads() {
    int count = draws.of(List.of(0, 1, 1, 1, 2));
    List<Spot> free = new ArrayList<>(List.of(Spot.values()));
    for (int number = 0; number < count; number++) {
      Spot spot = free.remove(draws.of(List.of(0, 0, 1, 2)).intValue());
      Mounting mounting =
          draws.chance(0.3)
              ? Mounting.standingOff(draws.millimetres(3, 12))
              : new Mounting(0, draws.within(0.005, 0.04));
      pads.add(
          new Pad(warmer(), spot, mounting, draws.chance(0.5) ? Times.fromHours(opened()) : 0.0));
    }
  }

  private double opened() {
    return draws.within(-3, 6);
  }

  /** A pad of the catalogue's sizes with a rise, a long sag and an end of its own. */
  private WarmerClass warmer() {
    double watts = draws.within(0.5, 3);
    double rise = Times.fromHours(draws.within(0.1, 2));
    double life = Times.fromHours(draws.within(8, 70));
    double sagged = draws.within(0.4, 0.9) * watts;
    TimeFunction power =
        TimeFunction.table(
            new double[] {0, rise, rise + life, rise + 1.15 * life},
            new double[] {0, watts, sagged, 0});
    WarmerClass sized = draws.of(Warmers.all());
    return new WarmerClass(
        "pad",
        sized.size(),
        sized.mass(),
        new PrescribedPower(power),
        new Range(0.75, 1.25),
        INVENTED);
  }

  private PackClass bottle() {
    Dimensions size =
        new Dimensions(
            draws.millimetres(80, 150), draws.millimetres(60, 100), draws.millimetres(15, 30));
    double mass = 0.95 * size.volume() * Materials.WATER.density();
    return new PackClass("bottle", Materials.WATER, size, mass, 0.005, INVENTED);
  }

  private PlacedPack onFloor(PackClass pack) {
    return new PlacedPack(
        "bottle",
        pack,
        Placement.onFace(Face.Z_MIN, Mounting.taped()),
        new PackStart.AtTemperature(fromCelsius(draws.within(4, 35))));
  }

  private Container cup(String name) {
    Vessel vessel = draws.of(VesselSizes.all()).vessel();
    if (vessel instanceof Vessel.Vial vial && draws.chance(0.4)) {
      vessel = new Vessel.Vial(vial.diameter(), vial.length(), Axis.X, vial.wall());
    }
    boolean lying = vessel.shape() == Shape.CYLINDER_X;
    List<Bedding> bedding = lying ? List.of() : bedding(vessel.inner().height());
    Animal animal = draws.of(Animals.all());
    return new Container(
        name,
        vessel,
        Position.MIDDLE_OF_FLOOR,
        bedding,
        Optional.of(new Occupant(animal, body(animal, vessel, bedding, lying))));
  }

  private static Container another(Container cup) {
    return new Container("second", cup.vessel(), cup.position(), cup.bedding(), cup.occupant());
  }

  private List<Bedding> bedding(double height) {
    Bedding towel = Bedding.dampTowel(draws.millimetres(2, 5));
    double deep = Math.min(draws.millimetres(8, 20), 0.3 * height);
    return draws.of(
        List.of(
            List.of(towel),
            List.of(towel),
            List.of(Bedding.dampMoss(deep)),
            List.of(Bedding.dampCoir(deep)),
            List.of()));
  }

  /** A body of a part of the length at which its animal would no longer fit. */
  private AnimalBody body(Animal animal, Vessel vessel, List<Bedding> bedding, boolean lying) {
    AnimalBody.Extents unit = new AnimalBody(1, animal.restingShape()).extents(animal.tissue());
    Dimensions inner = vessel.inner();
    double lain = bedding.stream().mapToDouble(Bedding::thickness).sum();
    double longer = Math.max(inner.length(), inner.width());
    double shorter = Math.min(inner.length(), inner.width());
    double fits =
        Math.min(
            Math.min(longer / unit.length(), shorter / unit.width()),
            (inner.height() - lain) / unit.height());
    if (lying) {
      fits = Math.min(fits, inner.height() / Math.hypot(unit.width(), unit.height()));
    } else if (vessel.shape() != Shape.BOX) {
      fits = Math.min(fits, inner.length() / Math.hypot(unit.length(), unit.width()));
    }
    double scale = draws.within(0.4, 0.9) * fits;
    Range masses = AnimalBody.MASSES;
    return animal.body(
        new Mass(Math.min(Math.max(scale * scale * scale, masses.low()), masses.high())));
  }

  /** Sets the cups up and takes down how much room they need. */
  private List<Container> arrange(List<Container> cups, double floor) {
    Position first = new Position(0, 0, floor);
    List<Container> standing = cups.stream().map(cup -> cup.at(first)).toList();
    double gap = draws.millimetres(0, 15);
    boolean stacked = standing.size() > 1 && draws.chance(0.4);
    if (standing.size() > 1) {
      standing =
          stacked
              ? Arrangement.stacked(gap, standing)
              : Arrangement.sideBySide(Axis.X, gap, standing);
    }
    for (Container cup : standing) {
      Dimensions inner = cup.vessel().inner();
      double reach = Math.abs(cup.position().alongX()) + inner.length() / 2;
      length = Math.max(length, 2 * reach);
      width = Math.max(width, inner.width());
      height = Math.max(height, cup.position().aboveFloor() + inner.height());
    }
    return standing;
  }

  /** Makes the cavity large enough for the pads, with some room around everything. */
  private void makeRoom(double gap) {
    height += gap;
    double aside = draws.millimetres(10, 50);
    double before = draws.millimetres(10, 50);
    for (Pad pad : pads) {
      switch (pad.spot()) {
        case LID -> height += pad.room() + draws.millimetres(0, 20);
        case LOOSE -> height += pad.warmer().size().thickness() + draws.millimetres(0, 20);
        case SIDE -> aside = Math.max(aside, pad.room() + draws.millimetres(0, 20));
        case END -> before = Math.max(before, pad.room() + draws.millimetres(0, 20));
      }
    }
    length += 2 * aside;
    width += 2 * before;
    for (Pad pad : pads) {
      boolean upright = pad.spot() == Spot.SIDE || pad.spot() == Spot.END;
      length = Math.max(length, pad.longer() + 2 * CORNER);
      width = Math.max(width, (upright ? pad.longer() : pad.shorter()) + 2 * CORNER);
      if (upright) {
        height = Math.max(height, pad.shorter() + 2 * CORNER);
      }
    }
    // a pad lies with its longer side along the longer one of its wall
    length = Math.max(length, width);
  }

  private PlacedWarmer placed(Pad pad, double above) {
    Placement placement =
        switch (pad.spot()) {
          case LID -> Placement.onFace(Face.Z_MAX, pad.mounting());
          case SIDE -> Placement.onFace(Face.X_MAX, pad.mounting());
          case END -> Placement.onFace(Face.Y_MIN, pad.mounting());
          case LOOSE -> new Placement.InCavity(new Position(0, 0, above), Axis.Z);
        };
    String name = "warmer on " + pad.spot();
    return new PlacedWarmer(name, pad.warmer(), placement, pad.opened());
  }

  private Walls walls(Dimensions inner) {
    WallLayer foam = new WallLayer(draws.of(FOAMS), draws.millimetres(10, 45));
    WallLayer board = new WallLayer(Materials.CORRUGATED_BOARD, 0.004);
    if (draws.chance(0.06)) {
      double thickness = 0.02;
      double cover = 2 * (thickness + board.thickness());
      Box outer = Box.ofSize(inner.length() + cover, inner.width() + cover, inner.height() + cover);
      return VacuumPanel.METALLISED_FILM.lining(outer, List.of(board), thickness);
    }
    List<WallLayer> layers = draws.chance(0.2) ? List.of(foam) : List.of(board, foam);
    Walls walls = Walls.uniform(layers);
    if (draws.chance(0.15)) {
      int firstShell = layers.size() - 1;
      walls = walls.with(new Joints(List.of(Axis.Z, Axis.Y, Axis.X), firstShell, 0.001));
    }
    if (draws.chance(0.15)) {
      walls = walls.with(Face.Z_MAX, List.of(board, new WallLayer(Materials.XPS, 0.03)));
    }
    return walls;
  }
}
