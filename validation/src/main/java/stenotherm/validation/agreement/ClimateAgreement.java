package stenotherm.validation.agreement;

import java.io.PrintStream;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.function.Predicate;
import java.util.stream.Stream;
import stenotherm.base.Axis;
import stenotherm.base.Face;
import stenotherm.base.Range;
import stenotherm.base.Times;
import stenotherm.grid.Box;
import stenotherm.journey.Journey;
import stenotherm.material.Materials;
import stenotherm.parcel.Container;
import stenotherm.parcel.Dimensions;
import stenotherm.parcel.FilmCover;
import stenotherm.parcel.Openings;
import stenotherm.parcel.Parcel;
import stenotherm.parcel.PlacedWarmer;
import stenotherm.parcel.Vent;
import stenotherm.parcel.WallLayer;
import stenotherm.parcel.Walls;
import stenotherm.transit.ParcelModel;
import stenotherm.transit.TransitResult;
import stenotherm.warmer.WarmerClass;
import stenotherm.warmer.Warmers;

/**
 * Draws parcels, journeys and variations at random, the warmers of iron powder, the parcels with
 * seams and holes, some of them gas-tight so that animals smother, runs each with its reduced model
 * and stepping every cell, and prints how far temperatures and oxygen are apart. Runs in which a
 * warmer comes within 5 % of going out or running away are told apart: there any error grows. A run
 * that fails counts as one that does not agree; the others go on.
 *
 * <p>Internal. Stateless, thus thread-safe.
 */
public final class ClimateAgreement {
  /** The step tolerance of the full solver, which leaves it within 0.5 mK [K]. */
  private static final double STEP_TOLERANCE = 1e-4;

  /** Hours of the longest journeys. */
  private static final double MOST_HOURS = 36;

  /** The most that oxygen may be off [-]. */
  private static final double OXYGEN_LIMIT = 5e-4;

  /** Gain of a warmer from which on it counts as about to go out or run away. */
  private static final double NEAR_FOLD = 0.95;

  /** The largest part of runs that may be told apart. */
  private static final double MOST_APART = 0.1;

  /** Part of parcels whose foam lets no gas through. */
  private static final double TIGHT = 0.25;

  private static final List<FilmCover> COVERS =
      List.of(FilmCover.FREE, FilmCover.EDGES_TAPED, FilmCover.HALF_TAPED, FilmCover.AGAINST_WALL);

  /**
   * One run of both.
   *
   * @param seed what it was drawn with
   * @param cells cells of its grid
   * @param hours duration
   * @param mean largest error of a mean [K]
   * @param extreme largest error of an extreme [K]
   * @param oxygen largest error of oxygen [-]
   * @param leastOxygen least oxygen that an animal breathed [-]
   * @param gain largest gain of a warmer, 0 without one
   * @param power largest difference of the power of a warmer [W]
   * @param worst the output that is furthest off for what is allowed, when, and what the model
   *     takes its error for
   */
  private record Compared(
      long seed,
      int cells,
      double hours,
      double mean,
      double extreme,
      double oxygen,
      double leastOxygen,
      double gain,
      double power,
      String worst) {
    boolean isNearFold() {
      return gain >= NEAR_FOLD;
    }

    boolean agrees() {
      return mean <= ModelAgreement.MEAN_LIMIT
          && extreme <= ModelAgreement.EXTREME_LIMIT
          && oxygen <= OXYGEN_LIMIT;
    }
  }

  private ClimateAgreement() {}

  /** A trial and how it went. */
  private record Tried(long seed, Future<Compared> run) {
    /** The comparison; if the trial failed prints why, and there is none. */
    Optional<Compared> get(PrintStream out) throws InterruptedException {
      try {
        return Optional.of(run.get());
      } catch (ExecutionException e) {
        line(out, "%6d  failed: %s", seed, String.valueOf(e.getCause()));
        return Optional.empty();
      }
    }
  }

  /**
   * Runs the trials and prints a line for each.
   *
   * @param out where to
   * @param tries how many
   * @param seed for the first; the next ones take the numbers that follow
   * @param cells range of the number of cells
   * @return true if all but the runs told apart agree, and those are few
   * @throws InterruptedException if the thread is interrupted
   */
  public static boolean print(PrintStream out, int tries, long seed, Range cells)
      throws InterruptedException {
    line(
        out,
        "Warmers of iron powder, gases and damp bedding: reduced models against stepping every");
    line(out, "cell, uncertain quantities varied; largest errors over the stored times");
    line(
        out,
        "%6s %6s %6s %8s %10s %9s %8s %6s %8s",
        "seed",
        "cells",
        "hours",
        "mean K",
        "extreme K",
        "O2 %-pts",
        "least O2",
        "gain",
        "power W");
    ExecutorService threads =
        Executors.newFixedThreadPool(Runtime.getRuntime().availableProcessors());
    List<Compared> all = new ArrayList<>();
    try {
      List<Tried> runs = new ArrayList<>();
      for (int number = 0; number < tries; number++) {
        long own = seed + number;
        runs.add(new Tried(own, threads.submit(() -> compare(own, cells))));
      }
      for (Tried run : runs) {
        Optional<Compared> compared = run.get(out);
        compared.ifPresent(each -> print(out, each));
        compared.ifPresent(all::add);
      }
    } finally {
      threads.shutdownNow();
    }
    List<Compared> counted = all.stream().filter(each -> !each.isNearFold()).toList();
    int apart = all.size() - counted.size();
    line(
        out,
        "%d of %d agree; %d of %d told apart; %d failed",
        counted.stream().filter(Compared::agrees).count(),
        counted.size(),
        apart,
        all.size(),
        tries - all.size());
    boolean passed =
        all.size() == tries
            && counted.stream().allMatch(Compared::agrees)
            && apart <= MOST_APART * all.size();
    line(out, passed ? "PASSED" : "FAILED");
    return passed;
  }

  private static void print(PrintStream out, Compared each) {
    line(
        out,
        "%6d %6d %6.1f %8.4f %10.4f %9.4f %8.4f %6.2f %8.4f  %s",
        each.seed,
        each.cells,
        each.hours,
        each.mean,
        each.extreme,
        100 * each.oxygen,
        each.leastOxygen,
        each.gain,
        each.power,
        each.isNearFold()
            ? "near going out or running away"
            : each.agrees() ? "" : "<- apart: " + each.worst);
  }

  private static Compared compare(long seed, Range cells) {
    Random random = new Random(seed);
    Trial trial = Trial.of(random, cells, MOST_HOURS);
    Parcel parcel = burning(trial.parcel(), new Draws(Draws.numbers(random, Trial.PARCEL_NUMBERS)));
    Journey journey = trial.journey();
    ParcelModel model =
        ParcelModel.of(parcel, journey, ModelAgreement.settings(trial.mesh(cells), STEP_TOLERANCE));
    TransitResult reduced = model.run(journey, trial.variation());
    TransitResult full = model.runEveryCell(journey, trial.variation());
    List<Deviation> temperatures = judged(parcel, Deviation.of(reduced, full));
    double oxygen = 0;
    double least = 1;
    for (Container cup : parcel.occupied()) {
      oxygen = Math.max(oxygen, apart(reduced.oxygen(cup.name()), full.oxygen(cup.name())));
      least = Math.min(least, Arrays.stream(full.oxygen(cup.name())).min().orElseThrow());
    }
    double gain = 0;
    double power = 0;
    for (PlacedWarmer warmer : parcel.warmers()) {
      gain = Math.max(gain, Arrays.stream(full.gain(warmer.name())).max().orElseThrow());
      power = Math.max(power, apart(reduced.power(warmer.name()), full.power(warmer.name())));
    }
    return new Compared(
        seed,
        full.cells(),
        Times.toHours(journey.duration()),
        largest(temperatures, each -> !each.isExtreme()),
        largest(temperatures, Deviation::isExtreme),
        oxygen,
        least,
        gain,
        power,
        worst(temperatures));
  }

  /**
   * Those of animals, warmers and packs. Damp layers, walls and air, of which a run has means, too,
   * count by what they do to these and to oxygen.
   */
  private static List<Deviation> judged(Parcel parcel, List<Deviation> all) {
    Set<String> names = new HashSet<>();
    parcel.occupied().forEach(cup -> names.add(cup.name()));
    parcel.warmers().forEach(warmer -> names.add(warmer.name()));
    parcel.packs().forEach(pack -> names.add(pack.name()));
    return all.stream()
        .filter(
            each ->
                names.stream()
                    .anyMatch(
                        name ->
                            Stream.of(" mean", " coldest", " hottest")
                                .anyMatch(end -> each.output().equals(name + end))))
        .toList();
  }

  private static String worst(List<Deviation> all) {
    Deviation worst = Collections.max(all, Comparator.comparingDouble(Deviation::part));
    return String.format(
        Locale.ROOT,
        "%s at %.2f h, taken for %.3f K",
        worst.output(),
        Times.toHours(worst.time()),
        worst.estimate());
  }

  /** The same parcel with the catalogue's warmers of these sizes, openings and films drawn. */
  private static Parcel burning(Parcel parcel, Draws draws) {
    List<PlacedWarmer> warmers = new ArrayList<>();
    for (PlacedWarmer each : parcel.warmers()) {
      WarmerClass iron =
          Warmers.all().stream()
              .filter(one -> one.size().equals(each.warmer().size()))
              .findFirst()
              .orElseThrow();
      warmers.add(
          new PlacedWarmer(each.name(), iron, each.placement(), each.opened(), draws.of(COVERS)));
    }
    double gap = draws.of(List.of(Openings.CLOSED_GAP, 0.0, Openings.LOOSE_GAP));
    List<Vent> vents =
        draws.chance(0.5) ? List.of(new Vent(Face.Y_MAX, 2, draws.millimetres(4, 10))) : List.of();
    Parcel burning = parcel.withWarmers(warmers).withOpenings(new Openings(gap, vents));
    return draws.chance(TIGHT) ? tight(burning, draws) : burning;
  }

  /** The same contents in foam that lets no gas through, without holes, taped or closed. */
  private static Parcel tight(Parcel parcel, Draws draws) {
    Walls foam = Walls.uniform(List.of(new WallLayer(Materials.XPS, draws.millimetres(10, 45))));
    Box cavity = parcel.cavity();
    Dimensions inner =
        new Dimensions(cavity.size(Axis.X), cavity.size(Axis.Y), cavity.size(Axis.Z));
    return new Parcel(
            "tight",
            foam.around(inner),
            foam,
            parcel.filling(),
            parcel.containers(),
            parcel.warmers(),
            parcel.packs())
        .withOpenings(new Openings(draws.of(List.of(0.0, Openings.CLOSED_GAP)), List.of()));
  }

  private static double apart(double[] values, double[] exact) {
    double largest = 0;
    for (int row = 0; row < exact.length; row++) {
      double off = Math.abs(values[row] - exact[row]);
      // in this order NaN comes last, so that it counts as the worst
      largest = Double.compare(off, largest) > 0 ? off : largest;
    }
    return largest;
  }

  private static double largest(List<Deviation> deviations, Predicate<Deviation> which) {
    return deviations.stream().filter(which).mapToDouble(Deviation::largest).max().orElse(0);
  }

  private static void line(PrintStream out, String format, Object... values) {
    out.println(String.format(Locale.ROOT, format, values));
  }
}
