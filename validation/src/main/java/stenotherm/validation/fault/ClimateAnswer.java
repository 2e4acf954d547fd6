package stenotherm.validation.fault;

import static stenotherm.validation.fault.Agreement.near;
import static stenotherm.validation.fault.Agreement.same;

import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import stenotherm.air.AmbientAir;
import stenotherm.air.FoamPanel;
import stenotherm.air.Gas;
import stenotherm.air.MoistAir;
import stenotherm.air.StandardAtmosphere;
import stenotherm.ambient.FaceFilms;
import stenotherm.animal.AnimalGroup;
import stenotherm.animal.Animals;
import stenotherm.animal.Metabolism;
import stenotherm.base.Face;
import stenotherm.base.Mass;
import stenotherm.base.Range;
import stenotherm.base.Source;
import stenotherm.base.TimeFunction;
import stenotherm.base.Times;
import stenotherm.conduction.IntegratorSettings;
import stenotherm.conduction.IntegratorSettings.Scheme;
import stenotherm.grid.Box;
import stenotherm.grid.MeshControl;
import stenotherm.journey.Journey;
import stenotherm.journey.Leg;
import stenotherm.journey.Place;
import stenotherm.journey.Surroundings;
import stenotherm.material.Material;
import stenotherm.material.Materials;
import stenotherm.parcel.Container;
import stenotherm.parcel.Dimensions;
import stenotherm.parcel.Filling;
import stenotherm.parcel.FilmCover;
import stenotherm.parcel.Mounting;
import stenotherm.parcel.Occupant;
import stenotherm.parcel.Openings;
import stenotherm.parcel.Parcel;
import stenotherm.parcel.PlacedWarmer;
import stenotherm.parcel.Placement;
import stenotherm.parcel.Position;
import stenotherm.parcel.Vessel;
import stenotherm.parcel.WallLayer;
import stenotherm.parcel.Walls;
import stenotherm.study.Fate;
import stenotherm.transit.Factor;
import stenotherm.transit.Transit;
import stenotherm.transit.TransitResult;
import stenotherm.transit.TransitSettings;
import stenotherm.transit.Variation;
import stenotherm.warmer.IronPowder;
import stenotherm.warmer.PowderKinetics;
import stenotherm.warmer.WarmerClass;
import stenotherm.warmer.Warmers;

/**
 * Answers about what burns and breathes in a parcel: a pouch and a gecko in a cloth bag, their one
 * air, and walls through which gases pass by diffusion alone or not at all.
 *
 * <p>Internal. Thread-safe.
 */
enum ClimateAnswer implements KnownAnswer {
  /**
   * A pouch that only its film holds back, in a box through whose walls gases diffuse: at a steady
   * state what diffuses in makes up for what is burnt less what the make-up flow brings, so that
   * oxygen inside over outside is G / (G + (1 - x) / x q), with q the oxygen that the pouch would
   * take in outside air. The vapour inside, which the closed form leaves out, is a percent or two.
   */
  OXYGEN_AT_STEADY_STATE {
    @Override
    public void check() {
      Parcel box = parcel(Materials.EPS_20, FilmCover.FREE, true);
      double[] oxygen = run(box, 24, 0).oxygen("bag");
      same("oxygen inside over outside", steadyRatio(), oxygen[oxygen.length - 1] / OUTSIDE, 0.04);
    }
  },

  /** All heat that the parcel is given is that of the iron burnt; vapour carries it about. */
  HEAT_OF_IRON {
    @Override
    public void check() {
      TransitResult result = run(parcel(Materials.XPS, FilmCover.FREE, false), 12, 0);
      double given =
          result.ledger().sources().values().stream().mapToDouble(Double::doubleValue).sum();
      same("heat", last(result.conversion("pad")) * POWDER.heat(), given, 0.02);
    }
  },

  /** A bench that conducts more stands for more iron, and as much more heat. */
  HEAT_OF_RATED_IRON {
    @Override
    public void check() {
      Parcel box = parcel(Materials.XPS, FilmCover.FREE, false);
      TransitResult result = run(box, 12, 0, Variation.NOMINAL.with(Factor.RATING_BENCH, 1));
      double given =
          result.ledger().sources().values().stream().mapToDouble(Double::doubleValue).sum();
      double heat = BENCH.high() * last(result.conversion("pad")) * POWDER.heat();
      same("heat", heat, given, 0.02);
    }
  },

  /**
   * A pouch that its reaction alone holds back, in a room colder than 40 °C, where the reaction is
   * known: by the law of Arrhenius it burns the slower the higher its activation energy. It burns
   * so little that it stays as cold as the room.
   */
  RATE_OF_COLD_IRON {
    @Override
    public void check() {
      Parcel box = parcel(Materials.XPS, FilmCover.FREE, false, SLOW);
      double[] converted = new double[2];
      for (int end = 0; end < 2; end++) {
        Variation variation = Variation.NOMINAL.with(Factor.ACTIVATION_ENERGY, 2 * end - 1);
        converted[end] = last(run(box, 3, 0, variation).conversion("pad"));
      }
      double between = PowderKinetics.ACTIVATIONS.high() - PowderKinetics.ACTIVATIONS.low();
      double slower =
          Math.exp(-between / MoistAir.GAS_CONSTANT * (1 / START - 1 / PowderKinetics.REFERENCE));
      same("conversion", slower, converted[1] / converted[0], 0.02);
    }
  },

  /** The part of the iron that is burnt is the part of its heat that was given. */
  CONVERSION_OF_IRON {
    @Override
    public void check() {
      TransitResult result = run(parcel(Materials.EPS_20, FilmCover.FREE, true), 12, 0);
      double[] times = result.times();
      double[] power = result.power("pad");
      double heat = 0;
      for (int row = 1; row < times.length; row++) {
        heat += (times[row] - times[row - 1]) * (power[row] + power[row - 1]) / 2;
      }
      same("conversion", heat / POWDER.heat(), last(result.conversion("pad")), 0.02);
    }
  },

  /** A pouch whose film is taped over stays as it is. */
  POUCH_TAPED_OVER {
    @Override
    public void check() {
      TransitResult result = run(parcel(Materials.EPS_20, FilmCover.TAPED_OVER, false), 3, 0);
      near("conversion", 0, last(result.conversion("pad")), 1e-12);
      near("warmest", START, Arrays.stream(result.mean("pad")).max().orElseThrow(), 0.01);
    }
  },

  /** In a tight parcel all the carbon dioxide that an animal breathes out stays. */
  CARBON_DIOXIDE_OF_ANIMAL {
    @Override
    public void check() {
      Parcel box = parcel(Materials.XPS, FilmCover.TAPED_OVER, true);
      double[] found = run(box, 3, 0).carbonDioxide("bag");
      double amount =
          StandardAtmosphere.SEA_LEVEL_PRESSURE * box.airVolume() / (MoistAir.GAS_CONSTANT * START);
      double breathedOut =
          Metabolism.resting(AnimalGroup.REPTILE, GECKO, START).carbonDioxide() * 3 * Times.HOUR;
      same("rise", breathedOut / amount, last(found) - found[0], 0.03);
    }
  },

  /** In thin air there is less oxygen to breathe. */
  OXYGEN_IN_AIRCRAFT {
    @Override
    public void check() {
      Parcel box = parcel(Materials.EPS_20, FilmCover.TAPED_OVER, true);
      double thin = StandardAtmosphere.pressure(2400) / StandardAtmosphere.SEA_LEVEL_PRESSURE;
      same("oxygen", thin * OUTSIDE, run(box, 3, 2400).breathing().leastOxygen(), 0.03);
    }
  },

  /** A parcel without air is lost, however warm it is. */
  BREACH_OF_AIR {
    @Override
    public void check() {
      Fate.Approach never = new Fate.Approach(5, Double.POSITIVE_INFINITY);
      double breach = new Fate(never, never, 0, 3600, Double.POSITIVE_INFINITY).breach();
      same("breach", 3600, breach, 1e-12);
    }
  };

  private static final Source MADE_UP = Source.assumed("made up");
  private static final double START = 295;
  private static final double GECKO = 0.045;

  /** Oxygen in the air outside. */
  private static final double OUTSIDE =
      new AmbientAir(START, StandardAtmosphere.SEA_LEVEL_PRESSURE, 0.6).fraction(Gas.OXYGEN);

  private static final Box OUTER = Box.ofSize(0.24, 0.20, 0.17);
  private static final double WALL = 0.02;

  private static final IronPowder POWDER = filmAlone();

  /** The same that its reaction alone holds back, a thousand times slower than usual. */
  private static final IronPowder SLOW =
      new IronPowder(
          POWDER.iron(),
          POWDER.film(),
          0,
          new PowderKinetics(
              1e-6 * POWDER.kinetics().conductance(),
              POWDER.kinetics().activationEnergy(),
              POWDER.kinetics().wetting()),
          POWDER.product());

  /** What the bench leaves open of the heat of a warmer. */
  private static final Range BENCH = new Range(0.7, 1.3);

  private static final TransitSettings SETTINGS =
      new TransitSettings(
              MeshControl.uniform(0.06),
              Times.HOUR / 6,
              IntegratorSettings.fixed(Scheme.TR_BDF2, Times.HOUR / 6))
          .full();

  /** The iron of a usual warmer, but one that crust and reaction do not hold back. */
  private static IronPowder filmAlone() {
    IronPowder usual = (IronPowder) Warmers.FORTY_HOUR.heat();
    PowderKinetics ready =
        new PowderKinetics(
            1e3 * usual.kinetics().conductance(),
            usual.kinetics().activationEnergy(),
            usual.kinetics().wetting());
    return new IronPowder(usual.iron(), usual.film(), 0, ready, usual.product());
  }

  /** Oxygen in the box over that outside, in closed form [-]. */
  private static double steadyRatio() {
    Parcel box = parcel(Materials.EPS_20, FilmCover.FREE, true);
    double conductance = 0;
    for (Face face : Face.values()) {
      conductance +=
          new FoamPanel(box.cavity().area(face), WALL, FoamPanel.EXPANDED_POLYSTYRENE)
              .conductance(Gas.OXYGEN, START, StandardAtmosphere.SEA_LEVEL_PRESSURE);
    }
    double diffusing =
        conductance * StandardAtmosphere.SEA_LEVEL_PRESSURE / (MoistAir.GAS_CONSTANT * START);
    double burning =
        POWDER.film().conductance(1, StandardAtmosphere.SEA_LEVEL_PRESSURE)
            * StandardAtmosphere.SEA_LEVEL_PRESSURE
            * OUTSIDE;
    return diffusing / (diffusing + (1 - OUTSIDE) / OUTSIDE * burning);
  }

  private static double last(double[] values) {
    return values[values.length - 1];
  }

  private static Parcel parcel(Material foam, FilmCover cover, boolean withAnimal) {
    return parcel(foam, cover, withAnimal, POWDER);
  }

  private static Parcel parcel(
      Material foam, FilmCover cover, boolean withAnimal, IronPowder powder) {
    WarmerClass usual = Warmers.FORTY_HOUR;
    WarmerClass pad =
        new WarmerClass(
            "pad", usual.size(), usual.mass(), powder, 1, new Range(0.75, 1.25), BENCH, MADE_UP);
    Vessel bag =
        new Vessel.Bag(
            new Dimensions(0.08, 0.06, 0.05), new WallLayer(Materials.COTTON_CLOTH, 4e-4));
    Container container =
        withAnimal
            ? new Container(
                "bag",
                bag,
                Position.MIDDLE_OF_FLOOR,
                List.of(),
                Optional.of(Occupant.of(Animals.LEOPARD_GECKO, new Mass(GECKO))))
            : Container.empty("bag", bag, Position.MIDDLE_OF_FLOOR);
    return new Parcel(
            "known",
            OUTER,
            Walls.uniform(List.of(new WallLayer(foam, WALL))),
            new Filling.Loose(Materials.SHREDDED_PAPER),
            List.of(container),
            List.of(
                new PlacedWarmer(
                    "pad", pad, Placement.onFace(Face.Z_MAX, Mounting.taped()), 0, cover)),
            List.of())
        .withOpenings(new Openings(0, List.of()));
  }

  private static TransitResult run(Parcel parcel, double hours, double altitude) {
    return run(parcel, hours, altitude, Variation.NOMINAL);
  }

  private static TransitResult run(
      Parcel parcel, double hours, double altitude, Variation variation) {
    Surroundings room =
        Surroundings.of(TimeFunction.constant(START), 0, FaceFilms.indoors()).atAltitude(altitude);
    Leg leg =
        new Leg("room", new Place("here", ZoneOffset.UTC), Times.fromHours(hours), room, MADE_UP);
    return Transit.run(
            parcel,
            new Journey(LocalDateTime.of(2026, 1, 5, 18, 0), START, List.of(leg)),
            variation,
            SETTINGS)
        .requireCompleted();
  }
}
