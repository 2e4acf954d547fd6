package stenotherm.scenario;

import java.util.List;
import java.util.Optional;
import stenotherm.base.Range;
import stenotherm.journey.Place;
import stenotherm.sun.Sky;
import stenotherm.text.Node;

/**
 * A place of a journey as the file describes it.
 *
 * @param place name and clock
 * @param node where the file names it, for complaints
 * @param days lows and highs day by day from the day of sealing [K]; empty for recorded weather
 * @param spread how far true outdoor temperatures may be above or below [K]
 * @param sun where it is and its sky; empty if the file does not say where
 */
record DescribedPlace(
    Place place, Node node, List<Range> days, double spread, Optional<SkyAbove> sun) {
  /** Coordinates in degrees, north and east positive, and the sky above them. */
  record SkyAbove(double latitude, double longitude, Sky sky) {}
}
