export function Together() {
  return null;
}
