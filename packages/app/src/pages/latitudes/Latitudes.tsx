export function Latitudes() {
  return null;
}
