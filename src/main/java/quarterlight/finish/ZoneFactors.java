package quarterlight.finish;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import quarterlight.visit.SignKind;

/**
 * The factors that a zone's evidence brings besides its values: each multiplies the likelihood of the four histories.
 *
 * @param metalFound that the gauge found metal at every spot with a value
 * @param all product of all, {@code metalFound} too
 * @param groups each other group's own factor, the exponent of signs applied
 */
final class ZoneFactors {
    private final double[] metalFound;
    private final double[] all;
    private final List<Group> groups;

    ZoneFactors(double[] metalFound, double[] all, List<Group> groups) {
        this.metalFound = metalFound;
        this.all = all;
        this.groups = groups;
    }

    double[] metalFound() {
        return metalFound;
    }

    double[] all() {
        return all;
    }

    List<Group> groups() {
        return groups;
    }

    /** One group of evidence and its factor of each history. */
    static final class Group {
        private final FinishReason.Source source;
        private final Optional<SignKind> sign;
        private final boolean seen;
        private final double[] factor;

        Group(FinishReason.Source source, Optional<SignKind> sign, boolean seen, double[] factor) {
            this.source = source;
            this.sign = sign;
            this.seen = seen;
            this.factor = factor;
        }

        FinishReason.Source source() {
            return source;
        }

        Optional<SignKind> sign() {
            return sign;
        }

        boolean seen() {
            return seen;
        }

        double[] factor() {
            return factor;
        }
    }

    static ZoneFactors of(FinishModel model, ZoneEvidence evidence) {
        List<Group> groups = new ArrayList<>();
        double[] noMetal = model.noMetal().toArray();
        int spots = evidence.spotsUm().size() + evidence.overRange();
        double[] metalFound = power(complement(noMetal), spots);
        if (evidence.noMetal() > 0) {
            double[] factor = power(noMetal, evidence.noMetal());
            groups.add(new Group(FinishReason.Source.NO_METAL, Optional.empty(), true, factor));
        }
        for (SignKind sign : SignKind.values()) {
            if (evidence.signs().containsKey(sign)) {
                groups.add(signGroup(model, Map.entry(sign, evidence.signs().get(sign))));
            }
        }
        evidence.rust().ifPresent(extent -> {
            double[] factor = power(model.rust().get(extent).toArray(), model.signExponent());
            groups.add(new Group(FinishReason.Source.RUST, Optional.empty(), true, factor));
        });
        double[] all = metalFound.clone();
        for (Group group : groups) {
            all = product(all, group.factor());
        }
        return new ZoneFactors(metalFound, all, List.copyOf(groups));
    }

    private static Group signGroup(FinishModel model, Map.Entry<SignKind, Boolean> sign) {
        double[] chance = model.signs().get(sign.getKey()).toArray();
        double[] factor = power(sign.getValue() ? chance : complement(chance), model.signExponent());
        return new Group(FinishReason.Source.SIGN, Optional.of(sign.getKey()), sign.getValue(), factor);
    }

    /** The product of all factors but one group's. */
    double[] without(Group left) {
        double[] rest = metalFound.clone();
        for (Group group : groups) {
            if (group != left) {
                rest = product(rest, group.factor());
            }
        }
        return rest;
    }

    /** The product of the groups' factors alone, as if there were no values. */
    double[] groupsOnly() {
        double[] rest = {1, 1, 1, 1};
        for (Group group : groups) {
            rest = product(rest, group.factor());
        }
        return rest;
    }

    private static double[] complement(double[] chances) {
        double[] complements = new double[4];
        for (int h = 0; h < 4; h++) {
            complements[h] = 1 - chances[h];
        }
        return complements;
    }

    /** Powers, scaled so that the largest is 1: a scale common to all histories cancels, and many spots cannot underflow. */
    private static double[] power(double[] factors, double exponent) {
        double most = Math.max(Math.max(factors[0], factors[1]), Math.max(factors[2], factors[3]));
        double[] powers = new double[4];
        for (int h = 0; h < 4; h++) {
            powers[h] = most == 0 ? 1 : Math.pow(factors[h] / most, exponent);
        }
        return powers;
    }

    private static double[] product(double[] a, double[] b) {
        double[] product = new double[4];
        for (int h = 0; h < 4; h++) {
            product[h] = a[h] * b[h];
        }
        return product;
    }
}
