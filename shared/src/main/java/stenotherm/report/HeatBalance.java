package stenotherm.report;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import stenotherm.conduction.HeatLedger;
import stenotherm.parcel.Bedding;
import stenotherm.parcel.Container;
import stenotherm.parcel.InnerHeat;
import stenotherm.parcel.Parcel;
import stenotherm.parcel.PlacedPack;
import stenotherm.parcel.PlacedWarmer;

/**
 * Where the heat of a packing came from and where it went until the planned opening: warmers,
 * sides, and what each thing inside took up or gave away.
 *
 * @param givers heat by what gave it, the most first [J]
 * @param takers heat by what took it, the most first [J]
 */
record HeatBalance(List<HeatShare> givers, List<HeatShare> takers) {
  /** Less than this part of all heat is not worth a line of its own. */
  private static final double WORTH_A_LINE = 0.005;

  /** What heat inside is called when it is given and when it is taken. */
  private record Ways(String giving, String taking) {}

  /** A giver or taker. */
  record HeatShare(String name, double heat) {}

  static HeatBalance of(Judged row) {
    HeatLedger ledger = row.planned().ledger();
    Map<String, Double> through = new LinkedHashMap<>();
    ledger
        .boundaries()
        .forEach((name, heat) -> through.merge(Words.sides(name), heat, Double::sum));
    Map<String, Double> stored = new LinkedHashMap<>();
    Map<String, String> things = things(row.parcel());
    ledger
        .storedIn()
        .forEach(
            (block, heat) ->
                stored.merge(things.getOrDefault(block, "walls and fill"), heat, Double::sum));
    // what a source in a pack gives is what the pack takes up less
    Map<String, Double> sources = new LinkedHashMap<>(ledger.sources());
    for (PlacedPack pack : row.parcel().packs()) {
      Double given = sources.remove(InnerHeat.ofPack(pack));
      if (given != null) {
        stored.merge(pack.name(), -given, Double::sum);
      }
    }
    Set<String> melting =
        row.parcel().packs().stream()
            .filter(pack -> pack.pack().melts() && meltsOnTheWay(row, pack.name()))
            .map(PlacedPack::name)
            .collect(Collectors.toSet());
    Map<String, Double> givers = new LinkedHashMap<>();
    Map<String, Double> takers = new LinkedHashMap<>();
    Map<String, Ways> inner = inner(row.parcel());
    sources.forEach(
        (name, heat) -> {
          Ways ways = inner.getOrDefault(name, new Ways(name, "into " + name));
          if (heat > 0) {
            givers.merge(ways.giving, heat, Double::sum);
          } else {
            takers.merge(ways.taking, -heat, Double::sum);
          }
        });
    through.forEach(
        (side, heat) -> {
          if (heat > 0) {
            givers.put("in through the " + side, heat);
          } else {
            takers.put("out through the " + side, -heat);
          }
        });
    stored.forEach(
        (thing, heat) -> {
          if (heat > 0) {
            takers.put("into " + thing + (melting.contains(thing) ? ", which melts" : ""), heat);
          } else {
            givers.put(thing + ", cooling", -heat);
          }
        });
    double all = givers.values().stream().mapToDouble(Double::doubleValue).sum();
    return new HeatBalance(sorted(givers, all), sorted(takers, all));
  }

  private static boolean meltsOnTheWay(Judged row, String pack) {
    double[] liquid = row.planned().liquidFraction(pack);
    return liquid[liquid.length - 1] > liquid[0];
  }

  private static List<HeatShare> sorted(Map<String, Double> heats, double all) {
    List<HeatShare> parts = new ArrayList<>();
    double small = 0;
    for (Map.Entry<String, Double> entry : heats.entrySet()) {
      if (entry.getValue() > WORTH_A_LINE * all) {
        parts.add(new HeatShare(entry.getKey(), entry.getValue()));
      } else {
        small += entry.getValue();
      }
    }
    parts.sort(Comparator.comparingDouble(HeatShare::heat).reversed());
    if (small > WORTH_A_LINE * all) {
      parts.add(new HeatShare("all else", small));
    }
    return List.copyOf(parts);
  }

  /** What animals, water and air give or take, by the name of the source. */
  private static Map<String, Ways> inner(Parcel parcel) {
    Map<String, Ways> inner = new LinkedHashMap<>();
    for (Container container : parcel.containers()) {
      inner.put(
          InnerHeat.ofAnimal(container),
          new Ways("what animals burn", "into water that leaves animals"));
      inner.put(
          InnerHeat.ofBedding(container),
          new Ways("water that condenses in bedding", "into water that leaves bedding"));
    }
    inner.put(
        InnerHeat.ofVentilation(),
        new Ways("in with air that comes and goes", "out with air that comes and goes"));
    inner.put(
        InnerHeat.ofWalls(),
        new Ways("water that condenses on the walls", "into water that dries off the walls"));
    return inner;
  }

  /** The names of the blocks inside, as people call the things that they belong to. */
  private static Map<String, String> things(Parcel parcel) {
    Map<String, String> things = new LinkedHashMap<>();
    boolean several = parcel.occupied().size() > 1;
    for (Container container : parcel.containers()) {
      String rest = parcel.containers().size() > 1 ? "containers" : "container";
      things.put(container.airBlock(), rest + ", with bedding");
      for (Bedding layer : container.bedding()) {
        things.put(container.beddingBlock(layer), rest + ", with bedding");
      }
      things.put(container.animalBlock(), several ? "animals" : "animal");
    }
    for (PlacedWarmer warmer : parcel.warmers()) {
      things.put(warmer.name(), "mass of the warmer");
    }
    for (PlacedPack pack : parcel.packs()) {
      things.put(pack.name(), pack.name());
    }
    return things;
  }

  /** The heat of all givers together [J]. */
  double given() {
    return givers.stream().mapToDouble(HeatShare::heat).sum();
  }
}
