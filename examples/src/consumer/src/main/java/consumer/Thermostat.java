package consumer;

import static stenotherm.base.Temperatures.fromCelsius;

import java.util.Arrays;
import stenotherm.base.Face;
import stenotherm.base.Range;
import stenotherm.base.Source;
import stenotherm.parcel.Mounting;
import stenotherm.parcel.PlacedWarmer;
import stenotherm.transit.Transit;
import stenotherm.transit.TransitResult;
import stenotherm.warmer.ControlledPower;
import stenotherm.warmer.HeaterLaw;
import stenotherm.warmer.WarmerClass;

/** The same with an electric heater of 8 W, on below 21 °C of the air in a cup and off above 22 °C. */
public final class Thermostat {
  private Thermostat() {}

  public static void main(String[] args) {
    var law = HeaterLaw.thermostat(8, fromCelsius(21), fromCelsius(22));
    var pad = new WarmerClass.PadSize(0.090, 0.055, 0.006);
    var off = new Range(0.95, 1.05);
    var heat = new ControlledPower("left", law);
    var heater = new WarmerClass("heater", pad, 0.04, heat, off, Source.assumed("its label"));
    var placed = new PlacedWarmer("heater", heater, Face.Z_MAX, Mounting.taped(), 0);
    var parcel = TwoCups.box().with(placed).build();
    TransitResult result = Transit.run(parcel, TwoCups.journey());
    double[] power = result.power("heater");
    System.out.println(result);
    if (Arrays.stream(power).distinct().count() != 2) {
      throw new IllegalStateException("it is either on or off");
    }
  }
}
