package quarterlight.walk;

import quarterlight.car.ZoneId;

/** A zone that a photo may show, with its probability 0 to 1. */
public record Suggestion(ZoneId zone, double p) {}
