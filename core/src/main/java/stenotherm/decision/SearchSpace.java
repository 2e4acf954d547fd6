package stenotherm.decision;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import stenotherm.base.Checks;
import stenotherm.base.InvalidInputException;
import stenotherm.base.Lengths;
import stenotherm.journey.Journey;
import stenotherm.material.Materials;
import stenotherm.parcel.BoxSize;
import stenotherm.parcel.BoxSizes;
import stenotherm.parcel.Dimensions;
import stenotherm.parcel.Filling;
import stenotherm.parcel.Parcel;
import stenotherm.warmer.WarmerClass;
import stenotherm.warmer.Warmers;

/**
 * What a search may choose from.
 *
 * <p>Experimental. A value, thus thread-safe.
 *
 * @param boxes cartons
 * @param foams thicknesses of foam [m], at least one, tried in their order
 * @param fillings fills
 * @param warmers classes of warmers; empty for none
 * @param counts how many warmers, 1 or 2, at least one number, tried in their order
 * @param changes what may be done beside it, one at a time
 * @param most how many candidates may be tried, 1 to {@value #MOST}
 */
public record SearchSpace(
    List<BoxSize> boxes,
    List<Double> foams,
    List<Filling> fillings,
    List<Optional<WarmerClass>> warmers,
    List<Integer> counts,
    List<Remedy> changes,
    int most) {
  /** More would take hours. */
  public static final int MOST = 10_000;

  private static final int USUAL = 300;

  /**
   * Copies the lists.
   *
   * @throws InvalidInputException if one but that of changes is empty, or the number is out of its
   *     range
   */
  public SearchSpace {
    boxes = Checks.notEmpty("boxes", boxes);
    foams = Checks.notEmpty("foams", foams);
    fillings = Checks.notEmpty("fillings", fillings);
    warmers = Checks.notEmpty("warmers", warmers);
    counts = Checks.notEmpty("counts", counts);
    changes = List.copyOf(changes);
    if (most < 1 || most > MOST) {
      throw new InvalidInputException("candidates", most + " must be within 1 to " + MOST);
    }
  }

  /**
   * Usual cartons, cubes and flat ones, foam from half an inch to two inches, every class of warmer
   * and none, one or two; and of each what a keeper may change beside it, the fill among it.
   *
   * @param parcel the packing whose contents are to be packed
   * @param journey its journey
   * @return the space
   */
  public static SearchSpace usual(Parcel parcel, Journey journey) {
    List<BoxSize> boxes = new ArrayList<>(BoxSizes.all());
    for (int side : new int[] {9, 10, 14}) {
      boxes.add(carton(side, side, side));
    }
    boxes.add(carton(12, 12, 6));
    boxes.add(carton(12, 12, 8));
    List<Optional<WarmerClass>> warmers = new ArrayList<>();
    warmers.add(Optional.empty());
    Warmers.all().forEach(each -> warmers.add(Optional.of(each)));
    List<Remedy> changes =
        new ArrayList<>(
            Remedy.toTry(warmed(parcel, journey), journey).stream()
                .filter(each -> !isChosenAnyhow(each))
                .toList());
    changes.add(new Remedy.OtherFill(new Filling.Loose(Materials.SHREDDED_PAPER)));
    changes.add(new Remedy.OtherFill(new Filling.Loose(Materials.CRUMPLED_NEWSPAPER)));
    changes.add(new Remedy.OtherFill(Filling.none()));
    return new SearchSpace(
        boxes,
        List.of(0.5, 0.75, 1.0, 1.5, 2.0).stream().map(Lengths::fromInches).toList(),
        List.of(parcel.filling()),
        warmers,
        List.of(1, 2),
        changes,
        USUAL);
  }

  /** With a warmer under the lid as choices have, so that what may be done to it is listed. */
  private static Parcel warmed(Parcel parcel, Journey journey) {
    Parcel bare = parcel.withoutWarmers();
    try {
      return new Remedy.OtherWarmer(Warmers.FORTY_HOUR).applyTo(bare, journey).parcel();
    } catch (InvalidInputException hasNoRoom) {
      return parcel;
    }
  }

  /** Box, foam and warmer are chosen from lists. */
  private static boolean isChosenAnyhow(Remedy change) {
    return change instanceof Remedy.ThickerFoam
        || change instanceof Remedy.ThinnerFoam
        || change instanceof Remedy.LargerBox
        || change instanceof Remedy.OtherWarmer
        || change instanceof Remedy.SecondWarmer
        || change instanceof Remedy.NoWarmer;
  }

  private static BoxSize carton(int length, int width, int height) {
    return BoxSize.carton(
        length + " x " + width + " x " + height + " in carton",
        new Dimensions(
            Lengths.fromInches(length), Lengths.fromInches(width), Lengths.fromInches(height)));
  }

  /**
   * Choices that differ from one in a single thing: the next smaller or larger box, foam one step
   * thinner or thicker, another class or number of warmers; with the same changes.
   */
  List<PackingChoice> beside(PackingChoice choice) {
    List<BoxSize> bySize = new ArrayList<>(boxes);
    bySize.sort(Comparator.comparingDouble(box -> box.inside().volume()));
    List<PackingChoice> all = new ArrayList<>();
    for (BoxSize box : neighbours(bySize, choice.box())) {
      all.add(choice.in(box, choice.foam()));
    }
    for (double foam : neighbours(foams, choice.foam())) {
      all.add(choice.in(choice.box(), foam));
    }
    for (Optional<WarmerClass> warmer : warmers) {
      for (int count : warmer.isEmpty() ? List.of(0) : counts) {
        boolean isOther = !warmer.equals(choice.warmer());
        boolean isMoreOrLess = count != choice.count();
        boolean isFirstOrNone = warmer.isEmpty() || choice.warmer().isEmpty();
        if (isOther ? isFirstOrNone || !isMoreOrLess : isMoreOrLess) {
          all.add(choice.heatedBy(warmer, count));
        }
      }
    }
    return all;
  }

  private static <T> List<T> neighbours(List<T> ordered, T one) {
    int at = ordered.indexOf(one);
    return Stream.of(at - 1, at + 1)
        .filter(next -> at >= 0 && next >= 0 && next < ordered.size())
        .map(ordered::get)
        .toList();
  }

  /** All choices without changes. */
  List<PackingChoice> choices() {
    List<PackingChoice> all = new ArrayList<>();
    for (BoxSize box : boxes) {
      for (double foam : foams) {
        for (Filling filling : fillings) {
          for (Optional<WarmerClass> warmer : warmers) {
            for (int count : warmer.isEmpty() ? List.of(0) : counts) {
              all.add(new PackingChoice(box, foam, filling, warmer, count, List.of()));
            }
          }
        }
      }
    }
    return all;
  }
}
