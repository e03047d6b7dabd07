/**
 * How far a thickness is from what a car of its kind should read: the steps that drawings tint by. Values in, values out; read
 * {@link quarterlight.finish.scale.ThicknessSteps} first.
 *
 * <p>Decided in docs/decisions: 0195.
 */
package quarterlight.finish.scale;
