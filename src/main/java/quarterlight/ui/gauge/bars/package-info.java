/** Bars for chances, reasons and differences. */
package quarterlight.ui.gauge.bars;
