/**
 * Measures that the trade still writes, turned into those the program keeps. Exact by definition.
 * @source NIST Special Publication 811 (2008), appendix B: inch 25.4 mm, foot 0.3048 m, pound 0.45359237 kg,
 *   US gallon 3.785411784 l, imperial gallon 4.54609 l, cubic inch 16.387064 ml
 */
const MM_IN_INCH = 25.4
const METRES_IN_FOOT = 0.3048
const KILOGRAMS_IN_POUND = 0.45359237
const OUNCES_IN_POUND = 16
const LITRES_IN_US_GALLON = 3.785411784
const LITRES_IN_IMPERIAL_GALLON = 4.54609
const LITRES_IN_CUBIC_INCH = 0.016387064
const PPM_IN_PERCENT = 10_000

export const mmFromInches = (inches: number): number => inches * MM_IN_INCH
export const inchesFromMm = (mm: number): number => mm / MM_IN_INCH
export const metresFromFeet = (feet: number): number => feet * METRES_IN_FOOT
export const squareMetresFromSquareFeet = (squareFeet: number): number => squareFeet * METRES_IN_FOOT ** 2
export const squareFeetFromSquareMetres = (squareMetres: number): number => squareMetres / METRES_IN_FOOT ** 2
export const kilogramsFromPounds = (pounds: number): number => pounds * KILOGRAMS_IN_POUND
export const poundsFromKilograms = (kilograms: number): number => kilograms / KILOGRAMS_IN_POUND
export const gramsFromOunces = (ounces: number): number =>
  (ounces * 1000 * KILOGRAMS_IN_POUND) / OUNCES_IN_POUND
export const litresFromUsGallons = (gallons: number): number => gallons * LITRES_IN_US_GALLON
export const litresFromImperialGallons = (gallons: number): number => gallons * LITRES_IN_IMPERIAL_GALLON
export const litresFromCubicInches = (cubicInches: number): number => cubicInches * LITRES_IN_CUBIC_INCH
export const celsiusFromFahrenheit = (fahrenheit: number): number => (fahrenheit - 32) / 1.8
export const fahrenheitFromCelsius = (celsius: number): number => celsius * 1.8 + 32
/** Parts by mass: 1 % is 10,000 ppm. Powder in mg/kg is not dip in mg/l, though both are said in ppm. */
export const ppmFromPercent = (percent: number): number => percent * PPM_IN_PERCENT
export const percentFromPpm = (ppm: number): number => ppm / PPM_IN_PERCENT
