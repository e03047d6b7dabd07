package quarterlight.walk;

import quarterlight.car.ZoneId;

/** One photo of a simulated walk: when it was taken, by the merged clocks, and what it truly shows. */
public record Snap(double seconds, ZoneId zone) {}
