/** The hatching that says "too much" wherever something does not fit. */
export function Hatch({ id }: { readonly id: string }) {
  return (
    <pattern id={id} width={6} height={6} patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
      <rect width={6} height={6} fill="var(--sheet)" />
      <path d="M1.500 0V6" stroke="var(--warn)" strokeWidth={2.5} />
    </pattern>
  )
}
