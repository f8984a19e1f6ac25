/** "1 entry", "1,104 entries". */
export function counted(value: number, one: string, many = `${one}s`): string {
  return `${value.toLocaleString('en')} ${value === 1 ? one : many}`;
}
