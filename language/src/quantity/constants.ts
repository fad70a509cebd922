/**
 * The exact definitions everything else follows from: NIST SP 811 (2008) Appendix B, and the International
 * Yard and Pound Agreement of 1959 (inch, pound). The US survey foot is withdrawn (85 FR 62698) and absent.
 */
import { rational } from './rational.js';

/** One inch in metres. */
export const inch = rational('0.0254');
/** One foot in metres. */
export const foot = inch.mul(12);
/** One statute mile in metres. */
export const mile = foot.mul(5280);
/** One avoirdupois pound in kilograms. */
export const pound = rational('0.45359237');
/** One avoirdupois ounce in kilograms. */
export const ounce = pound.div(16);
/** Standard gravity, m/s². */
export const gravity = rational('9.80665');
/** One pound-force in newtons. */
export const poundForce = pound.mul(gravity);
/** One US gallon, 231 cubic inches, in cubic metres. */
export const gallonUS = inch.pow(3).mul(231);
/** One imperial gallon in cubic metres. */
export const gallonImperial = rational('0.00454609');
/** One litre in cubic metres. */
export const litre = rational('0.001');
/** One conventional millimetre of mercury in pascals: 13 595.1 kg/m³ × g × 1 mm (SP 811, B.8). */
export const millimetreOfMercury = rational('13.5951').mul(gravity);
