package stenotherm.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import stenotherm.ambient.AmbientRule;
import stenotherm.ambient.Situation;
import stenotherm.ambient.Situations;
import stenotherm.ambient.SolarAbsorptance;
import stenotherm.animal.Animal;
import stenotherm.animal.Animals;
import stenotherm.animal.Limit;
import stenotherm.animal.Proportions;
import stenotherm.animal.TemperatureBand;
import stenotherm.base.Face;
import stenotherm.base.Provenance;
import stenotherm.base.Range;
import stenotherm.base.Source;
import stenotherm.base.Temperatures;
import stenotherm.base.Times;
import stenotherm.material.Behaviour;
import stenotherm.material.FillLaw;
import stenotherm.material.Material;
import stenotherm.material.Materials;
import stenotherm.material.Melting;
import stenotherm.material.TemperatureCorrection;
import stenotherm.parcel.BoxSize;
import stenotherm.parcel.BoxSizes;
import stenotherm.parcel.Dimensions;
import stenotherm.parcel.Vessel;
import stenotherm.parcel.VesselSize;
import stenotherm.parcel.VesselSizes;
import stenotherm.warmer.Bench;
import stenotherm.warmer.BenchRun;
import stenotherm.warmer.IronPowder;
import stenotherm.warmer.WarmerClass;
import stenotherm.warmer.Warmers;

/**
 * Writes the catalogues as tables and checks that no row lacks a range, a source or how it came.
 */
class CatalogueTest {
  private static final Path FOLDER = Path.of("target", "catalogue");
  private static final Set<String> PROVENANCES =
      Arrays.stream(Provenance.values()).map(Provenance::words).collect(Collectors.toSet());

  @Test
  void materials() throws IOException {
    List<String> header =
        List.of(
            "name",
            "conductivity W/(m K)",
            "lowest conductivity W/(m K)",
            "highest conductivity W/(m K)",
            "density kg/m3",
            "specific heat J/(kg K)",
            "law",
            "source",
            "how got");
    List<List<String>> rows = new ArrayList<>();
    for (Material material : Materials.all()) {
      Range range = material.conductivityRange();
      List<String> row = new ArrayList<>(List.of(material.name()));
      row.addAll(
          numbers(
              material.conductivity(),
              range.low(),
              range.high(),
              material.density(),
              material.specificHeat()));
      row.add(law(material.behaviour()));
      row.addAll(origin(material.source()));
      rows.add(row);
    }
    CsvTable table = written("materials.csv", header, rows);
    assertTrue(table.rows().size() >= 40);
    assertComplete(table, "source", "how got", "name");
  }

  private static String law(Behaviour behaviour) {
    if (behaviour instanceof Behaviour.Corrected corrected) {
      TemperatureCorrection law = corrected.correction();
      return "times exp(%s (T - %s K)), held below %s K; %s"
          .formatted(
              law.coefficient(),
              law.referenceTemperature(),
              law.lowestTemperature(),
              law.source().text());
    }
    if (behaviour instanceof Behaviour.Voids voids) {
      FillLaw law = voids.law();
      return "gas and solid %s W/(m K), voids of %s m, emissivity %s; void size assumed"
          .formatted(rounded(law.still()), law.voidSize(), law.emissivity());
    }
    if (behaviour instanceof Behaviour.Melts melts) {
      Melting law = melts.melting();
      return "melts from %s K to %s K with %s J/kg; liquid: %s W/(m K), %s J/(kg K)"
          .formatted(
              rounded(law.range().low()),
              rounded(law.range().high()),
              law.latentHeat(),
              law.liquidConductivity(),
              law.liquidSpecificHeat());
    }
    return "constant";
  }

  @Test
  void animals() throws IOException {
    List<String> header = new ArrayList<>(List.of("name", "species"));
    for (Limit limit : Limit.values()) {
      String band = limit.name().toLowerCase(Locale.ROOT);
      header.addAll(
          List.of(band + " low °C", band + " high °C", band + " source", band + " how got"));
    }
    header.addAll(
        List.of(
            "tissue", "tissue density kg/m3", "length : width : height", "companions", "cautions"));
    List<List<String>> rows = new ArrayList<>();
    for (Animal animal : Animals.all()) {
      List<String> row = new ArrayList<>(List.of(animal.name(), animal.species()));
      for (Limit limit : Limit.values()) {
        TemperatureBand band = animal.tolerance().band(limit);
        row.add(rounded(Temperatures.toCelsius(band.range().low())));
        row.add(rounded(Temperatures.toCelsius(band.range().high())));
        row.addAll(origin(band.source()));
      }
      Proportions shape = animal.restingShape();
      row.add(animal.tissue().name());
      row.addAll(numbers(animal.tissue().density()));
      row.add(shape.length() + " : " + shape.width() + " : " + shape.height());
      row.add(animal.companions().name().toLowerCase(Locale.ROOT));
      row.add(String.join(" ", animal.cautions()));
      rows.add(row);
    }
    CsvTable table = written("animals.csv", header, rows);
    assertTrue(table.rows().size() >= 10);
    for (Limit limit : Limit.values()) {
      String band = limit.name().toLowerCase(Locale.ROOT);
      assertComplete(table, band + " source", band + " how got", "name");
    }
  }

  @Test
  void warmers() throws IOException {
    List<String> header =
        List.of(
            "name",
            "length m",
            "width m",
            "thickness m",
            "mass kg",
            "iron kg",
            "heat kJ",
            "bench peak °C",
            "bench hours at or above 40 °C",
            "bench minutes to 40 °C",
            "bench mean W",
            "weakest factor",
            "strongest factor",
            "lowest factor for the bench",
            "highest factor for the bench",
            "source",
            "how got");
    List<List<String>> rows = new ArrayList<>();
    for (WarmerClass warmer : Warmers.all()) {
      WarmerClass.PadSize size = warmer.size();
      IronPowder powder = (IronPowder) warmer.heat();
      BenchRun run = Bench.RATING.run(warmer);
      List<String> row = new ArrayList<>(List.of(warmer.name()));
      row.addAll(numbers(size.length(), size.width(), size.thickness(), warmer.mass()));
      row.add(rounded(powder.iron()));
      row.add(tenths(powder.heat() / 1e3));
      row.add(tenths(Temperatures.toCelsius(run.curve().peak())));
      row.add(tenths(Times.toHours(run.curve().duration())));
      row.add(tenths(Times.toMinutes(run.curve().rise())));
      row.add(tenths(run.meanPower()));
      row.addAll(numbers(warmer.strength().low(), warmer.strength().high()));
      row.add(rounded(warmer.bench().low()));
      row.add(rounded(warmer.bench().high()));
      row.addAll(origin(warmer.source()));
      rows.add(row);
    }
    CsvTable table = written("warmers.csv", header, rows);
    assertEquals(Set.of(Provenance.ILLUSTRATIVE.words()), new HashSet<>(table.column("how got")));
    assertComplete(table, "source", "how got", "name");
  }

  @Test
  void absorptances() throws IOException {
    Map<String, SolarAbsorptance> named =
        new TreeMap<>(
            Map.of(
                "brown kraft board", SolarAbsorptance.KRAFT_BOARD,
                "white paint", SolarAbsorptance.WHITE_PAINT,
                "black paint", SolarAbsorptance.BLACK_PAINT));
    List<String> header =
        List.of("name", "solar absorptance", "lowest", "highest", "source", "how got");
    List<List<String>> rows = new ArrayList<>();
    named.forEach(
        (name, value) -> {
          List<String> row = new ArrayList<>(List.of(name));
          row.addAll(numbers(value.nominal(), value.range().low(), value.range().high()));
          row.addAll(origin(value.source()));
          rows.add(row);
        });
    assertComplete(written("absorptances.csv", header, rows), "source", "how got", "name");
  }

  @Test
  void situations() throws IOException {
    List<String> header =
        List.of(
            "name",
            "air",
            "spread ± K",
            "lid film W/(m2 K) at 10 °C",
            "parcel stowed",
            "altitude m",
            "sunlit",
            "source",
            "how got");
    List<List<String>> rows = new ArrayList<>();
    for (Situation situation : Situations.all()) {
      List<String> row = new ArrayList<>(List.of(situation.name(), air(situation.rule())));
      row.addAll(numbers(situation.spread()));
      row.add(rounded(situation.films().coefficient(Face.Z_MAX, 283.15, 283.15)));
      row.add(situation.stowage().words());
      row.add(rounded(situation.altitude()));
      row.add(situation.sunlit() ? "yes" : "no");
      row.addAll(origin(situation.source()));
      rows.add(row);
    }
    assertComplete(written("situations.csv", header, rows), "source", "how got", "name");
  }

  private static String air(AmbientRule rule) {
    if (rule instanceof AmbientRule.HeatedWhenCold heated) {
      return "%s, heated to %s °C at least"
          .formatted(air(heated.unheated()), rounded(Temperatures.toCelsius(heated.lowest())));
    }
    if (rule instanceof AmbientRule.Held held) {
      return "held at " + rounded(Temperatures.toCelsius(held.temperature())) + " °C";
    }
    if (rule instanceof AmbientRule.Following following) {
      return "outdoors %s K higher, %s h later"
          .formatted(rounded(following.offset()), rounded(Times.toHours(following.lag())));
    }
    throw new AssertionError("a rule that the table does not know: " + rule);
  }

  @Test
  void boxes() throws IOException {
    List<String> header = List.of("name", "length m", "width m", "height m", "source", "how got");
    List<List<String>> rows = new ArrayList<>();
    for (BoxSize box :
        Stream.concat(BoxSizes.all().stream(), BoxSizes.metric().stream()).toList()) {
      List<String> row = new ArrayList<>(List.of(box.name()));
      row.addAll(extents(box.inside()));
      row.addAll(origin(box.source()));
      rows.add(row);
    }
    assertComplete(written("boxes.csv", header, rows), "source", "how got", "name");
  }

  @Test
  void vessels() throws IOException {
    List<String> header =
        List.of(
            "name",
            "shape",
            "inner length m",
            "inner width m",
            "inner height m",
            "wall",
            "wall thickness m",
            "source",
            "how got");
    List<List<String>> rows = new ArrayList<>();
    for (VesselSize size :
        Stream.concat(VesselSizes.all().stream(), VesselSizes.metric().stream())
            .distinct()
            .toList()) {
      Vessel vessel = size.vessel();
      List<String> row = new ArrayList<>(List.of(size.name()));
      row.add(vessel.shape().name().toLowerCase(Locale.ROOT));
      row.addAll(extents(vessel.inner()));
      row.add(vessel.wall().material().name());
      row.addAll(numbers(vessel.wall().thickness()));
      row.addAll(origin(size.source()));
      rows.add(row);
    }
    assertComplete(written("vessels.csv", header, rows), "source", "how got", "name");
  }

  private static List<String> extents(Dimensions extents) {
    return List.of(rounded(extents.length()), rounded(extents.width()), rounded(extents.height()));
  }

  /** What is read back is what was written, commas, quotes and degree signs included. */
  private static CsvTable written(String file, List<String> header, List<List<String>> rows)
      throws IOException {
    CsvTable table = new CsvTable(header, rows);
    table.write(FOLDER.resolve(file));
    CsvTable read = CsvTable.read(FOLDER.resolve(file));
    assertEquals(table, read);
    return read;
  }

  private static void assertComplete(CsvTable table, String source, String how, String key) {
    Set<String> keys = new HashSet<>(table.column(key));
    assertEquals(table.rows().size(), keys.size(), "names are unique");
    for (List<String> row : table.rows()) {
      assertEquals(table.header().size(), row.size(), row.toString());
      assertFalse(row.stream().anyMatch(String::isBlank), row.toString());
    }
    table.column(source).forEach(text -> assertTrue(text.length() > 10, text));
    assertTrue(PROVENANCES.containsAll(table.column(how)), how);
  }

  private static List<String> origin(Source source) {
    return List.of(
        Stream.of(source.work(), source.locator())
            .filter(text -> !text.isEmpty())
            .collect(Collectors.joining(", ")),
        source.provenance().words());
  }

  /** All digits, without an exponent and whatever the locale. */
  private static List<String> numbers(double... values) {
    return Arrays.stream(values)
        .mapToObj(value -> BigDecimal.valueOf(value).stripTrailingZeros().toPlainString())
        .toList();
  }

  private static String tenths(double value) {
    return String.format(Locale.ROOT, "%.1f", value);
  }

  /** Without the last digits that a conversion leaves. */
  private static String rounded(double value) {
    return String.format(Locale.ROOT, "%.4f", value).replaceAll("\\.?0+$", "");
  }
}
