/** A door of its own: a page in the browser reads a weather file without the weight of the other sheets. */
export { readWeather, type WeatherRead } from './read-weather.ts'
