/**
 * Pictures as SVG: temperature against time with its tolerance bands, where heat comes from and
 * goes to, and sections through a parcel.
 *
 * <p>Start with {@link stenotherm.picture.TemperatureChart}, {@link stenotherm.picture.HeatChart}
 * and {@link stenotherm.picture.SectionPicture}, several of which make a {@link
 * stenotherm.picture.SectionSheet}; each has a builder and is a {@link stenotherm.picture.Picture}.
 * Values go in as SI (K, m, W, J, s from sealing); axes show the reader's units, and hours.
 *
 * <p>One look everywhere: names stand at the curves, every axis has its unit, colours can be told
 * apart by colour-blind readers and never judge, words do.
 *
 * <p>Limits: the pictures are laid out for 340 x 320 pixels and more; text is laid out by the
 * widths of one font and shown in the reader's own sans-serif font, which may be narrower; a
 * picture is drawn once and has no interaction.
 */
@NullMarked
package stenotherm.picture;

import org.jspecify.annotations.NullMarked;
