package stenotherm.report;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import stenotherm.animal.Animal;
import stenotherm.animal.Limit;
import stenotherm.base.Axis;
import stenotherm.base.Face;
import stenotherm.base.Range;
import stenotherm.base.Times;
import stenotherm.decision.Level;
import stenotherm.decision.Verdict;
import stenotherm.grid.Block;
import stenotherm.grid.Box;
import stenotherm.grid.Point;
import stenotherm.grid.Shape;
import stenotherm.journey.Journey;
import stenotherm.parcel.Container;
import stenotherm.parcel.Parcel;
import stenotherm.parcel.PlacedPack;
import stenotherm.parcel.PlacedWarmer;
import stenotherm.parcel.Vessel;
import stenotherm.parcel.WallLayer;
import stenotherm.picture.PackingDrawing;
import stenotherm.scenario.Scenario;
import stenotherm.words.Figures;
import stenotherm.words.Units;

/**
 * The sheet for the packing table: one printed page on how a parcel is packed, when it is not to be
 * sent, what stands on it and what to look at when it is opened.
 *
 * <p>Experimental. Immutable, thus thread-safe.
 *
 * @param scenario what was judged
 * @param row the packing
 * @param without the same packing without its warmers, if it has some
 * @param lows for which overnight lows the packing is good, in a sentence, if that was computed
 */
public record PackingSheet(
    Scenario scenario, Judged row, Optional<Judged> without, Optional<String> lows)
    implements Answer {
  /** The page. */
  public static final String PAGE = "packing-sheet.html";

  /** The same for other programs. */
  public static final String DATA = "packing-sheet.json";

  /** Names of all files, the page first. */
  public static final List<String> FILES = List.of(PAGE, DATA);

  /** Thinner walls are drawn as board, whatever they are of [m]. */
  static final double BOARD = 0.008;

  /** Before this a warmer that was opened is warm to the hand [s]. */
  private static final double WARM_AFTER = 600;

  /**
   * The sheet of the packing that a comparison takes.
   *
   * @param report the comparison
   * @return its sheet, without a range of lows
   */
  public static PackingSheet of(ComparisonReport report) {
    return of(report, Judged.best(report.rows()));
  }

  /**
   * The sheet of the first packing, with the warmers that it has.
   *
   * @param report the comparison
   * @return its sheet, without a range of lows
   */
  public static PackingSheet asPacked(ComparisonReport report) {
    return of(report, report.rows().get(0));
  }

  private static PackingSheet of(ComparisonReport report, Judged row) {
    Optional<Judged> without =
        report.rows().stream()
            .filter(each -> each.stripped() && row.hasWarmer())
            .filter(each -> each.parcel().name().equals(row.parcel().name()))
            .findFirst();
    return new PackingSheet(report.scenario(), row, without, Optional.empty());
  }

  /**
   * The same sheet with a range of lows.
   *
   * @param sentence for which overnight lows the packing is good
   * @return the sheet
   */
  public PackingSheet withLows(String sentence) {
    return new PackingSheet(scenario, row, without, Optional.of(sentence));
  }

  @Override
  public void print(PrintWriter out) {
    ConsoleText.line(out, title());
    ConsoleText.line(out, answer());
    ConsoleText.list(out, "Do not send", notWhen());
    ConsoleText.list(out, "Clock", clock());
    List<String> steps = steps().sentences();
    out.println();
    out.println("Pack in this order:");
    for (int step = 1; step <= steps.size(); step++) {
      ConsoleText.line(out, step + ". " + steps.get(step - 1));
    }
    ConsoleText.list(out, "Odds", odds());
    ConsoleText.list(out, "Labels (check yours: rules change)", labels());
    ConsoleText.list(out, "On arrival", arrival());
    ConsoleText.list(out, "Cautions", cautions());
  }

  @Override
  public String json() {
    ObjectNode root = JsonText.object();
    root.put("format", 1);
    root.put("title", title());
    root.put("packing", row.parcel().name());
    root.put("warmer", row.hasWarmer());
    root.put("level", row.verdict().level().name());
    root.put("of_100_go_well", 100 * row.verdict().within().within());
    add(root, "clock", clock());
    add(root, "steps", steps().sentences());
    add(root, "odds", odds());
    add(root, "do_not_send", notWhen());
    add(root, "labels", labels());
    add(root, "on_arrival", arrival());
    add(root, "cautions", cautions());
    return JsonText.of(root);
  }

  private static void add(ObjectNode root, String name, List<String> lines) {
    ArrayNode array = root.putArray(name);
    lines.forEach(array::add);
  }

  @Override
  public Map<String, byte[]> files(boolean pictures) {
    Map<String, byte[]> files = new LinkedHashMap<>();
    files.put(PAGE, page(pictures));
    files.put(DATA, json().getBytes(StandardCharsets.UTF_8));
    return files;
  }

  private byte[] page(boolean pictures) {
    AnswerPage page = AnswerPage.sheet(title(), answer());
    if (pictures) {
      PackingDrawing drawing = drawing();
      page.picture(
          drawing,
          drawing::heightFor,
          "To scale, distances in "
              + (scenario.units() == Units.US ? "inches" : "millimetres")
              + "; the numbers are those of the steps."
              + (row.parcel().openings().vents().isEmpty()
                  ? ""
                  : " Holes are small circles, or channels through a wall; what seems to lie at the"
                      + " end of a channel lies before or behind it."));
    }
    page.columns(
        left ->
            left.heading("Pack in this order")
                .steps(steps().sentences())
                .heading("Labels (check yours: rules change)")
                .list(labels())
                .heading("On arrival")
                .list(arrival()),
        right ->
            right
                .heading("Do not send")
                .list(notWhen())
                .heading("Clock")
                .list(clock())
                .heading("Odds")
                .list(odds())
                .cautions(cautions()));
    return page.html();
  }

  private String title() {
    return "Packing sheet: " + scenario.title();
  }

  private String answer() {
    String summary = new VerdictWords(words()).summary(row);
    return row.label() + ": " + summary + ".";
  }

  private PackingSteps steps() {
    double warmest = Tables.warmestAtWorst(row);
    return new PackingSteps(
        row.parcel(),
        scenario.carton(row.parcel()),
        warmer -> Cautions.softens(row.parcel(), warmer, warmest),
        figures());
  }

  private static int animals(Container container) {
    return container.occupant().orElseThrow().count();
  }

  private Figures figures() {
    return new Figures(scenario.units());
  }

  private Words words() {
    return new Words(scenario);
  }

  private Journey journey() {
    return scenario.journey();
  }

  private List<String> clock() {
    List<String> lines = new ArrayList<>();
    TreeMap<Double, List<String>> opened = new TreeMap<>();
    for (PlacedWarmer warmer : row.parcel().warmers()) {
      opened.computeIfAbsent(warmer.opened(), none -> new ArrayList<>()).add(warmer.name());
    }
    if (row.stripped()) {
      lines.add("Leave the warmer out: with it fewer go well.");
    }
    opened.forEach(
        (time, names) ->
            lines.add(
                opening(time)
                    + ": take '"
                    + String.join("', '", names)
                    + "' out of its wrapper"
                    + (time <= -WARM_AFTER
                        ? "; it must be warm to the hand when you seal."
                        : ", not earlier.")));
    lines.add(
        (words().dated()
                ? words().figures().weekdayAndClock(journey().sealing()) + ": seal."
                : "Seal.")
            + " "
            + start()
            + (row.parcel().packs().isEmpty() ? "." : "; packs see their step."));
    double end = row.assessment().plannedEnd();
    lines.add(
        when(end)
            + ": to be opened"
            + (words().dated() ? ", " + Figures.duration(end) + " after sealing." : "."));
    if (words().dated() && Weekends.touches(journey())) {
      lines.add("It is on the way or due on a Saturday or Sunday. " + Weekends.ASK);
    }
    Cautions.undated(scenario).ifPresent(lines::add);
    return lines;
  }

  /** A moment; without a date in hours from sealing, which count whenever it is sealed. */
  private String when(double time) {
    return words().dated()
        ? words().weekdayMoment(row.held(), time)
        : Figures.duration(time) + " after sealing";
  }

  /** When a warmer is opened, at a time from sealing that is not after it [s]. */
  private String opening(double time) {
    if (words().dated()) {
      return words().figures().weekdayAndClock(journey().sealing().plusSeconds(Math.round(time)));
    }
    return time < 0 ? Figures.duration(-time) + " before sealing" : "At sealing";
  }

  /** How warm all that goes in is to be. */
  private String start() {
    List<String> all = new ArrayList<>(List.of("Box"));
    if (row.parcel().filling().fill().isPresent()) {
      all.add("fill");
    }
    all.addAll(vessels(row.parcel().containers()));
    if (row.parcel().containers().stream().anyMatch(each -> !each.bedding().isEmpty())) {
      all.add("bedding");
    }
    return Figures.listed(all) + " have " + figures().temperature(journey().startTemperature());
  }

  /** What containers are, such as cups and bag. */
  private static List<String> vessels(List<Container> containers) {
    Map<String, Long> kinds = new LinkedHashMap<>();
    for (Container each : containers) {
      kinds.merge(kind(each.vessel()), 1L, Long::sum);
    }
    return kinds.entrySet().stream()
        .map(each -> each.getKey() + (each.getValue() > 1 ? "s" : ""))
        .toList();
  }

  /** What people call a container. */
  static String kind(Vessel vessel) {
    if (vessel instanceof Vessel.Bag) {
      return "bag";
    }
    return vessel instanceof Vessel.Vial ? "vial" : "cup";
  }

  private List<String> odds() {
    List<String> lines = new ArrayList<>();
    lines.add(new VerdictWords(words()).grounds(List.of(row)));
    without.ifPresent(
        bare ->
            lines.add(
                "Without the warmer "
                    + Words.inHundred(bare.verdict().within().within())
                    + " of 100"
                    + Words.goWell(bare.verdict().within().within())
                    + "."));
    lows.ifPresent(lines::add);
    return lines;
  }

  private List<String> notWhen() {
    List<String> lines = new ArrayList<>();
    if (row.verdict().level().compareTo(Level.LIKELY) > 0) {
      lines.add(
          "On this journey, packed like this: "
              + (row.verdict().level() == Level.GAMBLE
                  ? "it is a gamble."
                  : "it goes wrong too often."));
    }
    lines.addAll(new SheetWeather(scenario).sentences());
    lines.add(late());
    lines.add("If an animal is weak or ill: the numbers are those of a healthy one.");
    return lines;
  }

  private String late() {
    int spare = row.delay().orElse(0);
    if (spare == 0) {
      return "If it might be late: it has "
          + (row.delay().isPresent() ? "less than 1 h" : "no time")
          + " to spare.";
    }
    double latest = row.assessment().plannedEnd() + Times.fromHours(spare);
    return "If it might be opened later than "
        + when(latest)
        + ", "
        + spare
        + " h late: "
        + (spare == row.odds().longestDelay()
            ? "what comes then was not computed."
            : "it then no longer likely holds.");
  }

  private List<String> labels() {
    Map<Animal, Integer> animals = new LinkedHashMap<>();
    for (Container cup : row.parcel().occupied()) {
      animals.merge(Judged.animal(cup), animals(cup), Integer::sum);
    }
    List<String> lines = new ArrayList<>();
    lines.add(
        "Live-animal label on the top and on a side"
            + (row.parcel().openings().vents().isEmpty() ? "." : "; nothing covers the holes."));
    lines.add("This-way-up arrows on all four sides.");
    animals.forEach(
        (animal, count) -> {
          // whoever handles it should keep it comfortable, not just alive
          Range band = animal.tolerance().band(Limit.COMFORTABLE).range();
          lines.add(
              "Contents: "
                  + count
                  + " "
                  + (count > 1 ? PackingSteps.several(animal.name()) : animal.name())
                  + " ("
                  + animal.species()
                  + "), keep at "
                  + figures().temperature(band.low())
                  + " to "
                  + figures().temperature(band.high())
                  + ", where it is comfortable.");
        });
    lines.add(
        "Names and addresses of both ends; telephone of both, answered day and night:"
            + " ______________________");
    return lines;
  }

  private List<String> arrival() {
    List<String> lines = new ArrayList<>();
    lines.add(
        "Open at once, indoors. Clock: ________  "
            + (row.parcel().filling().fill().isPresent() ? "fill" : "air")
            + " beside the "
            + Figures.listed(vessels(row.parcel().occupied()))
            + ": ________ degrees");
    if (row.hasWarmer()) {
      lines.add("Warmer: hot / warm / cold. Take it out first; it may burn.");
    }
    int all = row.parcel().occupied().stream().mapToInt(PackingSheet::animals).sum();
    lines.add(
        all > 1
            ? "Animals: of "
                + all
                + ", ___ move, ___ weak, ___ dead. Bring them to their temperature slowly, no lamp."
            : "Animal: moves / weak / dead. Bring it to its temperature slowly, no lamp.");
    lines.add("Tell the sender all of it, also if all is well.");
    return lines;
  }

  private List<String> cautions() {
    List<String> all = new ArrayList<>(List.of(Verdict.DEFER));
    ComparisonReport alone = new ComparisonReport(scenario, List.of(row), Optional.empty());
    Optional<String> told = Cautions.undated(scenario);
    Cautions.of(alone).stream()
        .filter(caution -> !caution.equals(Verdict.DEFER) && !told.equals(Optional.of(caution)))
        .forEach(all::add);
    return all;
  }

  private PackingDrawing drawing() {
    Parcel parcel = row.parcel();
    PackingSteps steps = steps();
    Box outer = parcel.outer();
    PackingDrawing.Builder drawing =
        PackingDrawing.titled(
                figures().tapeSize(outer.size(Axis.X), outer.size(Axis.Y), outer.size(Axis.Z))
                    + " outside, "
                    + figures().mass(parcel.mass()))
            .units(scenario.units());
    Box shell = outer;
    int layers = 0;
    for (Face face : Face.values()) {
      layers = Math.max(layers, parcel.walls().layersOf(face).size());
    }
    for (int layer = 0; layer < layers; layer++) {
      drawing.part(part(isBoard(parcel, layer), shell));
      shell = inside(parcel, shell, layer);
    }
    drawing.part(
        new PackingDrawing.Part(PackingDrawing.Shown.FILL, parcel.cavity(), Shape.BOX, ""));
    for (Container each : parcel.containers()) {
      String number = Integer.toString(steps.stepOf(each.name()));
      Shape shape = each.vessel().shape();
      drawing.part(
          new PackingDrawing.Part(PackingDrawing.Shown.VESSEL, parcel.room(each), shape, number));
      each.bedding()
          .forEach(
              layer ->
                  drawing.part(block(PackingDrawing.Shown.BEDDING, each.beddingBlock(layer), "")));
      each.occupant()
          .ifPresent(
              who -> drawing.part(block(PackingDrawing.Shown.ANIMAL, each.animalBlock(), "")));
    }
    for (PlacedWarmer each : parcel.warmers()) {
      String number = Integer.toString(steps.stepOf(each.name()));
      drawing.part(block(PackingDrawing.Shown.WARMER, each.name(), number));
    }
    for (PlacedPack each : parcel.packs()) {
      String number = Integer.toString(steps.stepOf(each.name()));
      drawing.part(block(PackingDrawing.Shown.PACK, each.name(), number));
    }
    for (HolePlaces.Row row : new HolePlaces(parcel, figures()).rows()) {
      for (Point middle : row.middles()) {
        drawing.hole(new PackingDrawing.Hole(row.vent().face(), middle, row.vent().diameter()));
      }
    }
    return drawing.build();
  }

  private static PackingDrawing.Part part(boolean board, Box box) {
    return new PackingDrawing.Part(
        board ? PackingDrawing.Shown.BOARD : PackingDrawing.Shown.FOAM, box, Shape.BOX, "");
  }

  private PackingDrawing.Part block(PackingDrawing.Shown kind, String name, String number) {
    Block block = row.parcel().layout().block(name);
    Shape shape = block.asSolid().map(Block.Solid::shape).orElse(Shape.BOX);
    return new PackingDrawing.Part(kind, block.box(), shape, number);
  }

  private static boolean isBoard(Parcel parcel, int layer) {
    List<WallLayer> sides = parcel.walls().layersOf(Face.X_MIN);
    return layer < sides.size() && sides.get(layer).thickness() < BOARD;
  }

  /** The box within a layer of the walls. */
  private static Box inside(Parcel parcel, Box shell, int layer) {
    double[] low = {shell.min().x(), shell.min().y(), shell.min().z()};
    double[] high = {shell.max().x(), shell.max().y(), shell.max().z()};
    for (Face face : Face.values()) {
      List<WallLayer> layers = parcel.walls().layersOf(face);
      double thickness = layer < layers.size() ? layers.get(layer).thickness() : 0;
      int axis = face.axis().ordinal();
      if (face.isMax()) {
        high[axis] -= thickness;
      } else {
        low[axis] += thickness;
      }
    }
    return new Box(new Point(low[0], low[1], low[2]), new Point(high[0], high[1], high[2]));
  }
}
