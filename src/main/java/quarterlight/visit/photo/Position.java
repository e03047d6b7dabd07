package quarterlight.visit.photo;

/** A place on the earth as a camera recorded it, in degrees; kept in the visit, left out of everything for the buyer. */
public record Position(double latitude, double longitude) {
    public Position {
        if (!(Math.abs(latitude) <= 90) || !(Math.abs(longitude) <= 180)) {
            throw new IllegalArgumentException("no place on the earth: " + latitude + ", " + longitude);
        }
    }
}
