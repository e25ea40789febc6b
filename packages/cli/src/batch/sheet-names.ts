const longest = 60;
/** Names that a system keeps for its devices, whatever follows the dot (Microsoft, Naming Files, Paths, and Namespaces). */
const devices = /^(con|prn|aux|nul|com[0-9¹²³]|lpt[0-9¹²³])$/;

/**
 * Gives each sheet a name that every file system takes and no other sheet has: letters and digits of any script, and
 * hyphens; so no name leads out of its folder. The second of a name gets a number.
 */
export function sheetNames(): (called: string) => string {
  const taken = new Set<string>();
  return (called) => {
    const plain = called
      .normalize('NFKC')
      .replace(/[^\p{L}\p{M}\p{N}]+/gu, '-')
      .replace(/^[-\p{M}]+|-+$/gu, '');
    const short = [...plain].slice(0, longest).join('').replace(/-+$/, '');
    const stem = short === '' || devices.test(short.toLowerCase()) ? `sheet${short && `-${short}`}` : short;
    for (let number = 1; ; number++) {
      const name = number === 1 ? stem : `${stem}-${number}`;
      // some systems take names that differ in case alone for one
      const key = name.toLowerCase();
      if (taken.has(key)) continue;
      taken.add(key);
      return name;
    }
  };
}
