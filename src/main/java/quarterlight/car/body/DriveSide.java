package quarterlight.car.body;

import quarterlight.units.Worded;

/** The side the driver sits on; left and right are the car's own, seen in the direction of travel. */
public enum DriveSide implements Worded {
    LEFT,
    RIGHT
}
