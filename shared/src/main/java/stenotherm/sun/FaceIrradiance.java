package stenotherm.sun;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.function.DoubleUnaryOperator;
import stenotherm.base.Axis;
import stenotherm.base.Checks;
import stenotherm.base.Face;
import stenotherm.base.InvalidInputException;
import stenotherm.base.Range;
import stenotherm.base.TimeFunction;

/**
 * The sun's irradiance on the six faces of a box that stands upright, in time.
 *
 * <p>Experimental. Stateless, thus thread-safe.
 */
public final class FaceIrradiance {
  /**
   * Rows of the tables stand at most this far apart [s]. Straight lines between them miss the
   * irradiance by less than 2 W/m2 with the sun above 2°. Below that, the light that the model has
   * at the very moment of sunrise, 40 W/m2 at most, rises linearly over one row.
   */
  private static final double STEP = 600;

  /** Kinks are found to this [s]. */
  private static final double EXACT = 1;

  private static final Range HEADINGS = new Range(-360, 360);

  private FaceIrradiance() {}

  /**
   * Computes what falls on each face over some time. The functions are tables with a row every ten
   * minutes of daylight and wherever the sun rises, sets or passes the plane of the face; they are
   * zero at night and outside the time asked for.
   *
   * <p>A face on the ground or on a shelf gets nothing: what stands here for {@link Face#Z_MIN} is
   * for a parcel that hangs or stands high above sunlit ground.
   *
   * @param site the place
   * @param sky sky and ground
   * @param heading azimuth that the x axis points to: 0 north, 90 east; seen from above, y lies 90°
   *     anticlockwise of it [°]
   * @param start the local clock at time zero
   * @param time from when to when, from {@code start} [s]
   * @return for each direction of the world, named by the face of an upright parcel, the irradiance
   *     [W/m2] over the time since {@code start} [s]
   * @throws InvalidInputException if the heading is not within −360° to 360° or the time has no
   *     length
   */
  public static Map<Face, TimeFunction> of(
      SunSite site, Sky sky, double heading, LocalDateTime start, Range time) {
    Checks.within("heading", heading, HEADINGS, "°", "North is 0, east 90.");
    Checks.interval(time.low(), time.high());
    SunTrack track = new SunTrack(site, start, new HashMap<>());
    Map<Face, TimeFunction> irradiance = new EnumMap<>(Face.class);
    for (Face face : Face.values()) {
      irradiance.put(face, onFace(face, heading, sky, track, time));
    }
    return Collections.unmodifiableMap(irradiance);
  }

  /**
   * Returns the azimuth that a vertical face looks to.
   *
   * @param face one of the four vertical faces of an upright parcel
   * @param heading azimuth that the x axis points to [°]
   * @return azimuth of the face's outward normal, 0 to below 360 [°]
   * @throws InvalidInputException if the face looks up or down
   */
  public static double azimuth(Face face, double heading) {
    double turn =
        switch (face) {
          case X_MAX -> 0;
          case X_MIN -> 180;
          case Y_MAX -> -90;
          case Y_MIN -> 90;
          case Z_MIN, Z_MAX ->
              throw new InvalidInputException(
                  "face", face.label() + " looks up or down and has no azimuth");
        };
    double azimuth = (heading + turn) % 360;
    return azimuth < 0 ? azimuth + 360 : azimuth;
  }

  /** The sun in time, from a moment; all faces see one sun, so each position is found once. */
  private record SunTrack(SunSite site, LocalDateTime start, Map<Double, SunPosition> found) {
    LocalDateTime clock(double time) {
      return start.plusNanos(Math.round(time * 1e9));
    }

    SunPosition sun(double time) {
      return found.computeIfAbsent(time, at -> SunPosition.at(site, clock(at)));
    }

    int dayOfYear(double time) {
      return clock(time).getDayOfYear();
    }
  }

  private static TimeFunction onFace(
      Face face, double heading, Sky sky, SunTrack track, Range time) {
    DoubleUnaryOperator elevation = at -> track.sun(at).elevation();
    if (face.axis() == Axis.Z) {
      return table(
          at -> {
            SunPosition sun = track.sun(at);
            int day = track.dayOfYear(at);
            return face.isMax() ? sky.onUpperFace(sun, day) : sky.onLowerFace(sun, day);
          },
          List.of(elevation),
          time);
    }
    double azimuth = azimuth(face, heading);
    return table(
        at -> sky.onVerticalFace(track.sun(at), track.dayOfYear(at), azimuth),
        List.of(elevation, at -> track.sun(at).cosineOnVertical(azimuth)),
        time);
  }

  /** A table of a function that may have kinks where others change their sign; zero outside. */
  private static TimeFunction table(
      DoubleUnaryOperator function, List<DoubleUnaryOperator> kinks, Range time) {
    double[] times = times(kinks, time);
    double[] values = Arrays.stream(times).map(function).toArray();
    int last = times.length - 1;
    List<double[]> rows = new ArrayList<>();
    if (values[0] > 0) {
      rows.add(new double[] {times[0], 0});
    }
    for (int i = 0; i <= last; i++) {
      boolean night =
          values[i] == 0 && (i == 0 || values[i - 1] == 0) && (i == last || values[i + 1] == 0);
      if (!night) {
        rows.add(new double[] {times[i], values[i]});
      }
    }
    if (values[last] > 0) {
      rows.add(new double[] {times[last], 0});
    }
    if (rows.isEmpty()) {
      return TimeFunction.constant(0);
    }
    return TimeFunction.table(
        rows.stream().mapToDouble(row -> row[0]).toArray(),
        rows.stream().mapToDouble(row -> row[1]).toArray());
  }

  /** Evenly spaced times with both ends, and the kinks between them. */
  private static double[] times(List<DoubleUnaryOperator> kinks, Range time) {
    int parts = (int) Math.ceil((time.high() - time.low()) / STEP);
    SortedSet<Double> times = new TreeSet<>();
    for (int part = 0; part <= parts; part++) {
      times.add(time.low() + (time.high() - time.low()) * part / parts);
    }
    for (DoubleUnaryOperator kink : kinks) {
      for (int part = 0; part < parts; part++) {
        double from = time.low() + (time.high() - time.low()) * part / parts;
        double to = time.low() + (time.high() - time.low()) * (part + 1) / parts;
        if (kink.applyAsDouble(from) > 0 != kink.applyAsDouble(to) > 0) {
          times.add(lastNotPositive(kink, from, to));
        }
      }
    }
    return times.stream().mapToDouble(Double::doubleValue).toArray();
  }

  /** Next to the change of sign, on the side that is not positive: there the sun gives nothing. */
  private static double lastNotPositive(DoubleUnaryOperator function, double from, double to) {
    boolean rises = function.applyAsDouble(to) > 0;
    double notPositive = rises ? from : to;
    double positive = rises ? to : from;
    while (Math.abs(positive - notPositive) > EXACT) {
      double middle = (positive + notPositive) / 2;
      if (function.applyAsDouble(middle) > 0) {
        positive = middle;
      } else {
        notPositive = middle;
      }
    }
    return notPositive;
  }
}
