/**
 * Answers: how thick is the coating of each zone, how sure is that, and can the gauge be trusted?
 * <p>Pure statistics over readings; uses the values and commons-statistics. Read
 * {@link quarterlight.thickness.ZoneThickness} first; the method is in docs/methods/thickness.md.
 *
 * <p>Decided in docs/decisions: 0022, 0101, 0142.
 */
package quarterlight.thickness;
