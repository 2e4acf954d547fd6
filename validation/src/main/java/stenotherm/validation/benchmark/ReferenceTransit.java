package stenotherm.validation.benchmark;

import static stenotherm.base.Temperatures.fromCelsius;

import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import stenotherm.ambient.AirMovement;
import stenotherm.ambient.Ambient;
import stenotherm.ambient.FaceFilms;
import stenotherm.ambient.SolarAbsorptance;
import stenotherm.ambient.Sunshine;
import stenotherm.ambient.Underside;
import stenotherm.animal.Animals;
import stenotherm.base.Face;
import stenotherm.base.Mass;
import stenotherm.base.Orientation;
import stenotherm.base.Range;
import stenotherm.base.Source;
import stenotherm.base.TimeFunction;
import stenotherm.base.Times;
import stenotherm.conduction.IntegratorSettings;
import stenotherm.grid.MeshControl;
import stenotherm.journey.Contact;
import stenotherm.journey.Journey;
import stenotherm.journey.Leg;
import stenotherm.journey.Place;
import stenotherm.journey.Surroundings;
import stenotherm.material.Behaviour;
import stenotherm.material.Material;
import stenotherm.material.Materials;
import stenotherm.parcel.Bedding;
import stenotherm.parcel.Container;
import stenotherm.parcel.Dimensions;
import stenotherm.parcel.Filling;
import stenotherm.parcel.Mounting;
import stenotherm.parcel.Occupant;
import stenotherm.parcel.PackClass;
import stenotherm.parcel.PackStart;
import stenotherm.parcel.Parcel;
import stenotherm.parcel.PlacedPack;
import stenotherm.parcel.PlacedWarmer;
import stenotherm.parcel.Placement;
import stenotherm.parcel.Position;
import stenotherm.parcel.Vessel;
import stenotherm.parcel.WallLayer;
import stenotherm.parcel.Walls;
import stenotherm.transit.ModelScope;
import stenotherm.transit.ParcelModel;
import stenotherm.transit.Transit;
import stenotherm.transit.TransitResult;
import stenotherm.transit.TransitSettings;
import stenotherm.transit.Variation;
import stenotherm.warmer.Warmers;

/**
 * A parcel on a journey of 48 h in five legs with three kinds of air movement, hourly ambient and a
 * warmer under the lid, with more and more physics. Parcel and journey are invented.
 *
 * <p>Internal. Immutable, thus thread-safe.
 */
public enum ReferenceTransit {
  /** Upright, in the shade, at sea level; properties do not depend on temperature. */
  CONSTANT("constant properties", false, false, false),
  /** With sun by face, a parcel that is turned over, altitude, contacts and k(T), frozen. */
  FROZEN("all physics, frozen", true, false, false),
  /** The same with a paraffin that freezes and melts at 18 Celsius. */
  PACK("with a pack, frozen", true, true, false),
  /** As {@link #FROZEN}, with coefficients that follow the temperatures. */
  LIVE("all physics, live", true, false, true);

  static final String CUP = "cup";
  static final String WARMER = "warmer";

  private static final Place CLOCK = new Place("somewhere", ZoneOffset.UTC);
  private static final Source INVENTED = Source.assumed("invented");
  private static final Dimensions PACK_SIZE = new Dimensions(0.15, 0.10, 0.02);
  private static final PackClass PARAFFIN =
      new PackClass("paraffin", Materials.HEXADECANE, PACK_SIZE, 0.23, 0, INVENTED);

  private static final FaceFilms ROOM = FaceFilms.indoors();
  private static final FaceFilms VEHICLE =
      new FaceFilms(new AirMovement.Moving(0.5), 0.92, Underside.Resting.onHardFloor());
  private static final FaceFilms WIND =
      new FaceFilms(new AirMovement.Moving(2), 0.92, new Underside.Open());

  private final String title;
  private final boolean allPhysics;
  private final boolean pack;
  private final boolean live;

  ReferenceTransit(String title, boolean allPhysics, boolean pack, boolean live) {
    this.title = title;
    this.allPhysics = allPhysics;
    this.pack = pack;
    this.live = live;
  }

  /**
   * Returns the words of reports.
   *
   * @return a few words
   */
  public String title() {
    return title;
  }

  /**
   * The mesh of the timed run, of more than 60,000 cells.
   *
   * @return the control
   */
  public static MeshControl fullMesh() {
    return MeshControl.uniform(0.0085);
  }

  /**
   * Runs the journey with the full solver, stored every 15 min.
   *
   * @param mesh how fine the grid is
   * @param stepTolerance largest estimated local error of a step [K]
   * @return the history
   */
  public TransitResult run(MeshControl mesh, double stepTolerance) {
    return run(mesh, stepTolerance, Variation.NOMINAL);
  }

  /**
   * Runs the journey with the full solver and uncertain quantities at an end of their range, stored
   * every 15 min.
   *
   * @param mesh how fine the grid is
   * @param stepTolerance largest estimated local error of a step [K]
   * @param variation which quantities
   * @return the history
   */
  public TransitResult run(MeshControl mesh, double stepTolerance, Variation variation) {
    var settings =
        new TransitSettings(mesh, Times.HOUR / 4, IntegratorSettings.adaptive(stepTolerance));
    return Transit.run(parcel(), journey(), variation, live ? settings.live() : settings.full());
  }

  /**
   * Runs the journey with a reduced model, stored every 15 min.
   *
   * @param mesh how fine the grid is
   * @return the history; by the full solver if something melts or follows the temperatures
   */
  public TransitResult reduced(MeshControl mesh) {
    var settings = new TransitSettings(mesh, Times.HOUR / 4, IntegratorSettings.standard());
    return Transit.run(parcel(), journey(), Variation.NOMINAL, live ? settings.live() : settings);
  }

  /**
   * Makes a model of the parcel for the journey with nothing varied, whose runs are stored every 15
   * min.
   *
   * @param mesh how fine the grid is
   * @param stepTolerance largest estimated local error of a step where every cell is stepped [K]
   * @return the model
   */
  public ParcelModel model(MeshControl mesh, double stepTolerance) {
    var settings =
        new TransitSettings(mesh, Times.HOUR / 4, IntegratorSettings.adaptive(stepTolerance));
    return ParcelModel.of(parcel(), List.of(journey()), settings, ModelScope.NOMINAL);
  }

  /**
   * Runs the journey by stepping every cell under the coefficients of the reduced model, stored
   * every 15 min.
   *
   * @param mesh how fine the grid is
   * @param stepTolerance largest estimated local error of a step [K]
   * @return the history
   */
  public TransitResult everyCell(MeshControl mesh, double stepTolerance) {
    return model(mesh, stepTolerance).runEveryCell(journey(), Variation.NOMINAL);
  }

  private Parcel parcel() {
    Walls walls =
        Walls.uniform(
            List.of(
                new WallLayer(of(Materials.CORRUGATED_BOARD), 0.004),
                new WallLayer(of(Materials.EPS_20), 0.025)));
    var cup =
        new Container(
            CUP,
            new Vessel.BoxCup(
                new Dimensions(0.11, 0.08, 0.06), new WallLayer(Materials.POLYPROPYLENE, 0.0005)),
            new Position(0, 0, 0.03),
            Bedding.dampTowel(0.004),
            Occupant.of(Animals.LEOPARD_GECKO, Mass.grams(45)));
    var warmer = new PlacedWarmer(WARMER, Warmers.FORTY_HOUR, Face.Z_MAX, Mounting.taped(), 0);
    var paraffin =
        new PlacedPack(
            "pack",
            PARAFFIN,
            Placement.onFace(Face.Z_MIN, Mounting.taped()),
            new PackStart.AtTemperature(fromCelsius(21)));
    return new Parcel(
        "reference",
        walls.around(new Dimensions(0.22, 0.17, 0.16)),
        walls,
        new Filling.Loose(of(Materials.SHREDDED_PAPER)),
        List.of(cup),
        List.of(warmer),
        pack ? List.of(paraffin) : List.of());
  }

  private Material of(Material material) {
    return allPhysics ? material : material.withBehaviour(new Behaviour.Constant());
  }

  /**
   * Returns the journey.
   *
   * @return the journey
   */
  public Journey journey() {
    Surroundings porch = air(-2, WIND);
    Surroundings van = air(8, VEHICLE);
    Surroundings dock = air(12, WIND);
    Surroundings hold = air(5, VEHICLE);
    Surroundings shelf = air(0, ROOM);
    if (allPhysics) {
      TimeFunction sun =
          TimeFunction.table(
              new double[] {Times.fromHours(10), Times.fromHours(11.5), Times.fromHours(13)},
              new double[] {300, 600, 200});
      var half = new Range(0, 0.5);
      var whole = new Range(0, 1);
      var neighbour = new Contact.Neighbour(Ambient.constant(fromCelsius(10)), 0.05);
      van =
          van.lying(Orientation.X_MIN_UP)
              .touching(List.of(new Contact(Face.Y_MAX, half, whole, neighbour)));
      dock =
          dock.under(
              new Sunshine(
                  Map.of(Face.Z_MAX, sun, Face.Y_MIN, sun), SolarAbsorptance.KRAFT_BOARD, 0));
      hold =
          hold.atAltitude(2400).touching(List.of(new Contact(Face.X_MAX, whole, half, neighbour)));
    }
    List<Leg> legs = new ArrayList<>();
    legs.add(leg("porch", 2, porch));
    legs.add(leg("van", 8, van));
    legs.add(leg("dock", 3, dock));
    legs.add(leg("hold", 11, hold));
    legs.add(leg("shelf", 24, shelf));
    return new Journey(LocalDateTime.of(2026, 3, 2, 0, 0), fromCelsius(21), legs);
  }

  private static Leg leg(String name, double hours, Surroundings surroundings) {
    return new Leg(name, CLOCK, Times.fromHours(hours), surroundings, INVENTED);
  }

  /** Hourly values with a daily swing of 4 K to both sides. */
  private static Surroundings air(double mean, FaceFilms films) {
    double[] times = new double[49];
    double[] kelvin = new double[49];
    for (int hour = 0; hour < times.length; hour++) {
      times[hour] = Times.fromHours(hour);
      kelvin[hour] = fromCelsius(mean + 4 * Math.sin(2 * Math.PI * hour / 24));
    }
    return Surroundings.of(Ambient.series(times, kelvin), 0, films);
  }
}
