package stenotherm.validation.studies;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import stenotherm.validation.studies.Study.Kind;

/**
 * The studies that come with the program.
 *
 * <p>Internal. Stateless, thus thread-safe.
 */
public final class Studies {
  private Studies() {}

  /**
   * Returns all studies.
   *
   * @return the studies, verification first
   */
  public static List<Study> all() {
    List<Study> all = new ArrayList<>();
    all.addAll(
        List.of(
            new RadiatingSlab(Kind.VERIFICATION),
            new LumpedLimit(),
            new CoolingBodies(CoolingBodies.Part.SERIES),
            new CoolingBodies(CoolingBodies.Part.FIRST_TERM),
            new CoolingBodies(CoolingBodies.Part.STEPPED),
            new HollowBox(Kind.VERIFICATION),
            new PeriodicWalls(),
            new MeltingFronts(),
            new RadiatingSlab(Kind.BENCHMARK),
            new HollowBox(Kind.BENCHMARK),
            new HollowBox(Kind.REGRESSION)));
    Arrays.stream(Handbook.Part.values()).map(Handbook::new).forEach(all::add);
    all.add(new Sunlight());
    all.addAll(Textbook.all());
    all.addAll(MeasuredBoxes.all());
    all.add(new LoggedJourneys());
    all.add(new IceMelt());
    all.add(new WarmerSpacing());
    all.add(new WinterWarmer());
    all.add(new IronWarmer());
    return List.copyOf(all);
  }
}
