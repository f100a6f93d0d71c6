// Every word typed has to stand somewhere in the group, the name, the value or the description.
export interface Findable {
  group: string;
  name: string;
  value: string;
  description: string;
}

export function findParameters<P extends Findable>(parameters: P[], typed: string): P[] {
  const sought = typed.toLowerCase().split(/[\s:]+/).filter(Boolean);
  return parameters.filter((each) => {
    const text = `${each.group} ${each.name} ${each.value} ${each.description}`.toLowerCase();
    return sought.every((word) => text.includes(word));
  });
}

// Four corners of three numbers each, one corner a line.
export function cornerLines(corners: number[]): string[] {
  const lines: string[] = [];
  for (let i = 0; i + 2 < corners.length; i += 3) lines.push(corners.slice(i, i + 3).map((x) => x.toFixed(3).replace('-', '\u2212')).join(', '));
  return lines;
}
