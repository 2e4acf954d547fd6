package stenotherm.parcel;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import stenotherm.base.Axis;
import stenotherm.base.Face;
import stenotherm.base.HeatDirection;
import stenotherm.base.Temperatures;
import stenotherm.conduction.BoundaryKind;
import stenotherm.conduction.HeatNetwork;
import stenotherm.conduction.HeatNetworkBuilder;
import stenotherm.conduction.ThinResistance;
import stenotherm.grid.Block;
import stenotherm.grid.Box;
import stenotherm.grid.FacePatch;
import stenotherm.grid.Layout;
import stenotherm.grid.MeshControl;
import stenotherm.material.Material;
import stenotherm.material.Materials;

/** Turns a parcel into blocks and a heat network. */
final class ParcelLayout {
  /** Temperature at which the conductivity of the air is taken unless stated [K]. */
  private static final double AIR_TEMPERATURE = Temperatures.fromCelsius(15);

  private final Parcel parcel;
  private final Box cavity;

  ParcelLayout(Parcel parcel) {
    this.parcel = parcel;
    this.cavity = parcel.cavity();
  }

  /** Walls, fill, contents of containers, warmers, packs; see {@link Parcel#layout}. */
  Layout layout() {
    List<Block> blocks = new ArrayList<>(parcel.walls().blocks(parcel.outer()));
    blocks.add(new Block.Solid(Parcel.FILL, cavity, fillMaterial()));
    for (Container container : parcel.containers()) {
      double conductivity =
          container.airConductivity(HeatDirection.HORIZONTAL, Axis.Z, AIR_TEMPERATURE);
      blocks.addAll(container.blocks(cavity, conductivity));
    }
    for (PlacedWarmer warmer : parcel.warmers()) {
      Box box = warmer.item(cavity).box();
      blocks.add(new Block.Solid(warmer.name(), box, contents(warmer)).withFineEdges());
    }
    for (PlacedPack pack : parcel.packs()) {
      blocks.add(new Block.Solid(pack.name(), pack.item(cavity).box(), pack.pack().spread()));
    }
    return new Layout(blocks);
  }

  /** Fresh mix with the mass that the warmer has, not that of its bulk. */
  private static Material contents(PlacedWarmer warmer) {
    return Densities.with(Materials.WARMER_MIX_FRESH, warmer.warmer().density());
  }

  /** What is between walls and contents: a fill, or air as a solid. */
  Material fillMaterial() {
    return parcel.filling().fill().orElseGet(this::air);
  }

  private Material air() {
    CavityAir air = new CavityAir(parcel.filling().air().orElseThrow(), gap());
    return Materials.STILL_AIR.withConductivity(
        air.conductivity(HeatDirection.HORIZONTAL, 0, AIR_TEMPERATURE));
  }

  /** Twice the free volume over the surface of walls and contents [m]. */
  double gap() {
    double volume = cavity.volume();
    double surface = new Item(Parcel.FILL, cavity).surface();
    for (Item item : parcel.items()) {
      volume -= item.volume();
      surface += item.surface();
    }
    return 2 * volume / surface;
  }

  /** The network of the parcel; see {@link Parcel#network(MeshControl, List, Set)}. */
  HeatNetwork network(MeshControl mesh, List<FacePatch> patches, Set<InnerHeat> innerHeat) {
    HeatNetworkBuilder network = HeatNetwork.builder(layout(), mesh);
    for (Face face : Face.values()) {
      network.boundary(face, BoundaryKind.CONVECTION);
    }
    patches.forEach(patch -> network.patch(patch, BoundaryKind.CONVECTION));
    parcel.walls().jointResistances().forEach(network::thinResistance);
    parcel.containers().forEach(container -> network.thinResistance(container.wallResistance()));
    for (PlacedWarmer warmer : parcel.warmers()) {
      network.source(warmer.name());
      addContact(network, warmer.name(), warmer.placement());
    }
    for (PlacedPack pack : parcel.packs()) {
      network.thinResistance(ThinResistance.around(Set.of(pack.name()), pack.pack().wrap()));
      addContact(network, pack.name(), pack.placement());
    }
    for (InnerHeat kind : InnerHeat.values()) {
      if (innerHeat.contains(kind)) {
        addSources(network, kind);
      }
    }
    return network.build();
  }

  private void addSources(HeatNetworkBuilder network, InnerHeat kind) {
    switch (kind) {
      case PACKS ->
          parcel.packs().stream()
              .filter(pack -> pack.oneBody().isPresent())
              .forEach(pack -> network.source(InnerHeat.ofPack(pack), Set.of(pack.name())));
      case ANIMALS -> parcel.occupied().forEach(each -> network.source(InnerHeat.ofAnimal(each)));
      case BEDDING -> {
        for (Container container : parcel.containers()) {
          Set<String> damp = container.dampBlocks();
          if (!damp.isEmpty()) {
            network.source(InnerHeat.ofBedding(container), damp);
          }
        }
      }
      case VENTILATION -> network.source(InnerHeat.ofVentilation(), Set.of(Parcel.FILL));
      case WALLS -> network.source(InnerHeat.ofWalls(), Set.copyOf(parcel.innermostBlocks()));
    }
  }

  private void addContact(HeatNetworkBuilder network, String name, Placement placement) {
    placement
        .onWall()
        .ifPresent(
            place ->
                network.thinResistance(
                    ThinResistance.between(
                        name,
                        parcel.walls().innermost(place.face()),
                        place.mounting().contactResistance())));
  }
}
