package stenotherm.transit;

import java.io.ByteArrayOutputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.util.zip.CRC32;
import stenotherm.air.VentHole;
import stenotherm.animal.Animal;
import stenotherm.animal.Animals;
import stenotherm.base.Face;
import stenotherm.base.Range;
import stenotherm.base.Times;
import stenotherm.grid.Block;
import stenotherm.grid.Box;
import stenotherm.material.Material;
import stenotherm.parcel.Bedding;
import stenotherm.parcel.Container;
import stenotherm.parcel.Joints;
import stenotherm.parcel.Occupant;
import stenotherm.parcel.Parcel;
import stenotherm.parcel.PlacedPack;
import stenotherm.parcel.PlacedWarmer;
import stenotherm.parcel.Placement;
import stenotherm.parcel.Vent;
import stenotherm.parcel.WallLayer;
import stenotherm.warmer.ControlledPower;
import stenotherm.warmer.HeatRelease;
import stenotherm.warmer.IronPowder;
import stenotherm.warmer.WarmerClass;

/**
 * A checksum of all that runs of a packing depend on, the same on any machine: by it a stored model
 * is told from that of another packing. A model is built for how the packing burns, breathes and
 * leaks, too: its basis and its coefficients are those that such runs ask for.
 *
 * <p>Left out are the name of the packing, citations, cautions and tolerances, on which no
 * temperature depends. Numbers count to seven digits, lest the last digits of a fitted warmer,
 * which another processor may find otherwise, make another packing. Powers that functions give are
 * taken at some times and temperatures.
 */
final class PackingIdentity {
  /** Temperatures at which laws are taken [K]. */
  private static final double[] TEMPERATURES = {263.15, 283.15, 293.15, 313.15};

  /** Times since its opening at which a power is taken [h]. */
  private static final int HOURS = 48;

  private final ByteArrayOutputStream bytes = new ByteArrayOutputStream();
  private final DataOutputStream out = new DataOutputStream(bytes);

  private PackingIdentity() {}

  /** The checksum (CRC-32) of a packing. */
  static long of(Parcel parcel) throws IOException {
    PackingIdentity identity = new PackingIdentity();
    identity.addBlocks(parcel);
    identity.addWalls(parcel);
    for (Container container : parcel.containers()) {
      identity.add(container);
    }
    for (PlacedWarmer warmer : parcel.warmers()) {
      identity.add(warmer);
    }
    for (PlacedPack pack : parcel.packs()) {
      identity.add(pack);
    }
    CRC32 checksum = new CRC32();
    checksum.update(identity.bytes.toByteArray());
    return checksum.getValue();
  }

  private void words(String text) throws IOException {
    out.writeUTF(text);
  }

  private void numbers(double... values) throws IOException {
    for (double value : values) {
      out.writeFloat((float) value);
    }
  }

  private void range(Range range) throws IOException {
    numbers(range.low(), range.high());
  }

  private void addBlocks(Parcel parcel) throws IOException {
    for (Block block : parcel.layout().blocks()) {
      words(block.name());
      Box box = block.box();
      numbers(box.min().x(), box.min().y(), box.min().z());
      numbers(box.max().x(), box.max().y(), box.max().z());
      words(block.shape().name());
      if (block instanceof Block.Solid solid) {
        add(solid.material());
      }
    }
  }

  private void add(Material material) throws IOException {
    words(material.name());
    numbers(material.conductivity(), material.density(), material.specificHeat());
    range(material.conductivityRange());
    for (double temperature : TEMPERATURES) {
      numbers(material.conductivityAt(temperature));
    }
  }

  /** What blocks do not show: joints, and where air passes. */
  private void addWalls(Parcel parcel) throws IOException {
    for (Face face : Face.values()) {
      for (WallLayer layer : parcel.walls().layersOf(face)) {
        add(layer);
      }
    }
    Joints joints = parcel.walls().joints();
    words(joints.overlap().toString());
    numbers(joints.firstShell(), joints.gap());
    numbers(parcel.openings().seamGap());
    range(parcel.openings().gapFactors());
    for (Vent vent : parcel.openings().vents()) {
      words(vent.face().name());
      numbers(vent.count(), vent.diameter());
    }
  }

  private void add(WallLayer layer) throws IOException {
    words(layer.material().name());
    numbers(layer.material().conductivity(), layer.thickness());
  }

  private void add(Container container) throws IOException {
    words(container.name());
    add(container.vessel().wall());
    for (VentHole hole : container.vessel().holes()) {
      numbers(hole.diameter(), hole.length());
    }
    for (Bedding layer : container.bedding()) {
      words(layer.name());
      numbers(layer.thickness(), layer.waterPerDryMass());
    }
    if (container.occupant().isPresent()) {
      Occupant who = container.occupant().get();
      Animal animal = who.animal();
      words(animal.species());
      words(Animals.group(animal).map(Enum::name).orElse(""));
      numbers(who.body().mass(), who.count());
    }
  }

  private void add(PlacedWarmer placed) throws IOException {
    words(placed.name());
    add(placed.placement());
    numbers(placed.opened());
    words(placed.cover().name());
    WarmerClass kind = placed.warmer();
    numbers(kind.mass(), kind.usual());
    range(kind.strength());
    range(kind.bench());
    HeatRelease heat = kind.heat();
    if (heat instanceof IronPowder powder) {
      numbers(powder.iron(), powder.crust());
      numbers(powder.film().permeance(), powder.film().area());
      words(powder.film().transport().name());
      numbers(powder.kinetics().conductance(), powder.kinetics().activationEnergy());
      numbers(powder.kinetics().wetting());
      words(powder.product().name());
    } else if (heat instanceof ControlledPower controlled) {
      words(controlled.watched());
      for (double temperature : TEMPERATURES) {
        numbers(controlled.law().power(temperature, 0));
      }
    } else {
      for (int hour = 0; hour < HOURS; hour++) {
        numbers(placed.prescribedPower().at(placed.opened() + hour * Times.HOUR));
      }
    }
  }

  private void add(PlacedPack placed) throws IOException {
    words(placed.name());
    add(placed.placement());
    numbers(placed.pack().wrap(), placed.start().temperatureOf(placed.pack()));
  }

  /** Where it lies is in its block; how it is held is not. */
  private void add(Placement placement) throws IOException {
    if (placement.onWall().isPresent()) {
      Placement.OnFace place = placement.onWall().get();
      words(place.face().name());
      numbers(place.mounting().standOff(), place.mounting().contactResistance());
    }
  }
}
