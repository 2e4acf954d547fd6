package stenotherm.parcel;

import java.util.Arrays;
import stenotherm.base.TimeFunction;

/** A warmer's curve on the clock of the parcel: nothing before it is opened. */
record ShiftedFunction(TimeFunction curve, double origin) implements TimeFunction {
  @Override
  public double at(double time) {
    return time < origin ? 0 : curve.at(time - origin);
  }

  @Override
  public double before(double time) {
    return time <= origin ? 0 : curve.before(time - origin);
  }

  @Override
  public double[] breakpoints(double from, double to) {
    double[] inner =
        Arrays.stream(curve.breakpoints(Math.max(0, from - origin), to - origin))
            .map(time -> time + origin)
            .filter(time -> time > from && time < to)
            .toArray();
    if (origin <= from || origin >= to) {
      return inner;
    }
    double[] all = Arrays.copyOf(inner, inner.length + 1);
    all[inner.length] = origin;
    Arrays.sort(all);
    return all;
  }
}
