// Makes fixtures.json with an independent polygon-offset library: npm clipper2-ts 2.0.1.
// Run once: npm install clipper2-ts@2.0.1 && node make-fixtures.mjs > fixtures.json
import { inflatePathsD, JoinType, EndType } from 'clipper2-ts';

const outlines = {
  square: [[0, 0], [200, 0], [200, 200], [0, 200]],
  trapezium: [[0, 0], [260, 0], [220, 300], [40, 300]],
  'L shape': [[0, 0], [300, 0], [300, 120], [120, 120], [120, 260], [0, 260]],
  'five-sided, with a hollow': [[0, 0], [180, -20], [280, 90], [150, 110], [-40, 170]],
  'twelve-sided': Array.from({ length: 12 }, (_, i) => [150 * Math.cos(i * Math.PI / 6), 150 * Math.sin(i * Math.PI / 6)]),
};
const area = ring => Math.abs(ring.reduce((sum, p, i) => {
  const q = ring[(i + 1) % ring.length];
  return sum + p[0] * q[1] - q[0] * p[1];
}, 0)) / 2;
const cases = [];
for (const [name, outline] of Object.entries(outlines)) {
  for (const width of [6, 10, 15.875, 25]) {
    const path = outline.map(([x, y]) => ({ x, y }));
    const grown = inflatePathsD([path], width, JoinType.Miter, EndType.Polygon, 10, 6);
    const ring = grown[0].map(p => [p.x, p.y]);
    cases.push({ name, width, outline, offset: ring, area: area(ring) });
  }
}
console.log('[\n' + cases.map(c => JSON.stringify(c)).join(',\n') + '\n]');
