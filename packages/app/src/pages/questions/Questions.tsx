export function Questions() {
  return null;
}
