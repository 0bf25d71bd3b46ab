/* A code of squares by ISO/IEC 18004: bytes, level M, versions 1 to 20. squares(bytes) gives rows of true and false, or null. */
const CHECKS = [0, 10, 16, 26, 18, 24, 16, 18, 22, 22, 26, 30, 22, 22, 24, 24, 28, 28, 26, 26, 26];
const BLOCKS = [0, 1, 1, 1, 2, 2, 4, 4, 4, 5, 5, 5, 8, 9, 9, 10, 10, 11, 13, 14, 16];
function codewords(version) {
  let bits = (16 * version + 128) * version + 64;
  if (version >= 2) {
    const marks = Math.floor(version / 7) + 2;
    bits -= (25 * marks - 10) * marks - 55;
    if (version >= 7) bits -= 36;
  }
  return Math.floor(bits / 8);
}
function times(x, y) {
  let z = 0;
  for (let i = 7; i >= 0; i--) {
    z = (z << 1) ^ ((z >>> 7) * 0x11d);
    z ^= ((y >>> i) & 1) * x;
  }
  return z;
}
function divisor(degree) {
  const result = new Array(degree).fill(0);
  result[degree - 1] = 1;
  let root = 1;
  for (let i = 0; i < degree; i++) {
    for (let j = 0; j < degree; j++) {
      result[j] = times(result[j], root);
      if (j + 1 < degree) result[j] ^= result[j + 1];
    }
    root = times(root, 2);
  }
  return result;
}
function remainder(data, by) {
  const result = by.map(() => 0);
  for (const b of data) {
    const factor = b ^ result.shift();
    result.push(0);
    by.forEach((c, i) => { result[i] ^= times(c, factor); });
  }
  return result;
}
function capacity(version) {
  return codewords(version) - CHECKS[version] * BLOCKS[version] - (version < 10 ? 2 : 3);
}
function interleaved(bytes, version) {
  const all = codewords(version);
  const room = all - CHECKS[version] * BLOCKS[version];
  const bits = [];
  const put = (value, count) => { for (let i = count - 1; i >= 0; i--) bits.push((value >>> i) & 1); };
  put(4, 4);
  put(bytes.length, version < 10 ? 8 : 16);
  bytes.forEach(b => put(b, 8));
  put(0, Math.min(4, room * 8 - bits.length));
  while (bits.length % 8) bits.push(0);
  const data = [];
  for (let i = 0; i < bits.length; i += 8) data.push(parseInt(bits.slice(i, i + 8).join(''), 2));
  for (let pad = 0xec; data.length < room; pad ^= 0xec ^ 0x11) data.push(pad);
  const count = BLOCKS[version];
  const shorts = count - all % count;
  const length = Math.floor(all / count);
  const by = divisor(CHECKS[version]);
  const blocks = [];
  let at = 0;
  for (let i = 0; i < count; i++) {
    const part = data.slice(at, at + length - CHECKS[version] + (i < shorts ? 0 : 1));
    at += part.length;
    blocks.push({ part, sum: remainder(part, by) });
  }
  const result = [];
  for (let i = 0; i <= length - CHECKS[version]; i++) blocks.forEach(b => { if (i < b.part.length) result.push(b.part[i]); });
  for (let i = 0; i < CHECKS[version]; i++) blocks.forEach(b => result.push(b.sum[i]));
  return result;
}
function alignments(version) {
  if (version === 1) return [];
  const count = Math.floor(version / 7) + 2;
  const step = Math.ceil((version * 4 + 4) / (count * 2 - 2)) * 2;
  const result = [6];
  for (let at = version * 4 + 10; result.length < count; at -= step) result.splice(1, 0, at);
  return result;
}
const MASKS = [
  (x, y) => (x + y) % 2 === 0, (x, y) => y % 2 === 0, x => x % 3 === 0, (x, y) => (x + y) % 3 === 0,
  (x, y) => (Math.floor(x / 3) + Math.floor(y / 2)) % 2 === 0, (x, y) => x * y % 2 + x * y % 3 === 0,
  (x, y) => (x * y % 2 + x * y % 3) % 2 === 0, (x, y) => ((x + y) % 2 + x * y % 3) % 2 === 0];
function penalty(grid) {
  const size = grid.length;
  let sum = 0;
  let dark = 0;
  for (let turn = 0; turn < 2; turn++) {
    for (let a = 0; a < size; a++) {
      let line = '';
      for (let b = 0; b < size; b++) line += (turn ? grid[b][a] : grid[a][b]) ? '1' : '0';
      for (const run of line.match(/1{5,}|0{5,}/g) || []) sum += run.length - 2;
      const edged = '0000' + line + '0000';
      for (let i = 0; i + 11 <= edged.length; i++) {
        const eleven = edged.slice(i, i + 11);
        if (eleven === '10111010000' || eleven === '00001011101') sum += 40;
      }
    }
  }
  for (let y = 0; y < size; y++) {
    for (let x = 0; x < size; x++) {
      if (grid[y][x]) dark++;
      if (x && y && grid[y][x] === grid[y - 1][x] && grid[y][x] === grid[y][x - 1] && grid[y][x] === grid[y - 1][x - 1]) sum += 3;
    }
  }
  return sum + Math.floor(Math.abs(dark * 20 - size * size * 10) / (size * size)) * 10;
}
function squares(bytes) {
  let version = 1;
  while (version <= 20 && capacity(version) < bytes.length) version++;
  if (version > 20) return null;
  const size = version * 4 + 17;
  const grid = Array.from({ length: size }, () => new Array(size).fill(false));
  const fixed = Array.from({ length: size }, () => new Array(size).fill(false));
  const set = (x, y, dark) => { grid[y][x] = dark; fixed[y][x] = true; };
  for (let i = 0; i < size; i++) { set(6, i, i % 2 === 0); set(i, 6, i % 2 === 0); }
  for (const [cx, cy] of [[3, 3], [size - 4, 3], [3, size - 4]]) {
    for (let dy = -4; dy <= 4; dy++) {
      for (let dx = -4; dx <= 4; dx++) {
        const far = Math.max(Math.abs(dx), Math.abs(dy));
        const x = cx + dx;
        const y = cy + dy;
        if (x >= 0 && x < size && y >= 0 && y < size) set(x, y, far !== 2 && far !== 4);
      }
    }
  }
  const places = alignments(version);
  const last = places.length - 1;
  places.forEach((cy, i) => places.forEach((cx, j) => {
    if ((i === 0 && j === 0) || (i === 0 && j === last) || (i === last && j === 0)) return;
    for (let dy = -2; dy <= 2; dy++) {
      for (let dx = -2; dx <= 2; dx++) set(cx + dx, cy + dy, Math.max(Math.abs(dx), Math.abs(dy)) !== 1);
    }
  }));
  const format = mask => {
    let rest = mask;
    for (let i = 0; i < 10; i++) rest = (rest << 1) ^ ((rest >>> 9) * 0x537);
    const bits = ((mask << 10) | rest) ^ 0x5412;
    const bit = i => ((bits >>> i) & 1) === 1;
    for (let i = 0; i <= 5; i++) set(8, i, bit(i));
    set(8, 7, bit(6));
    set(8, 8, bit(7));
    set(7, 8, bit(8));
    for (let i = 9; i < 15; i++) set(14 - i, 8, bit(i));
    for (let i = 0; i < 8; i++) set(size - 1 - i, 8, bit(i));
    for (let i = 8; i < 15; i++) set(8, size - 15 + i, bit(i));
    set(8, size - 8, true);
  };
  format(0);
  if (version >= 7) {
    let rest = version;
    for (let i = 0; i < 12; i++) rest = (rest << 1) ^ ((rest >>> 11) * 0x1f25);
    const bits = (version << 12) | rest;
    for (let i = 0; i < 18; i++) {
      const a = size - 11 + i % 3;
      const b = Math.floor(i / 3);
      set(a, b, ((bits >>> i) & 1) === 1);
      set(b, a, ((bits >>> i) & 1) === 1);
    }
  }
  const data = interleaved(bytes, version);
  let at = 0;
  for (let right = size - 1; right >= 1; right -= 2) {
    if (right === 6) right = 5;
    for (let step = 0; step < size; step++) {
      for (let j = 0; j < 2; j++) {
        const x = right - j;
        const y = ((right + 1) & 2) === 0 ? size - 1 - step : step;
        if (!fixed[y][x] && at < data.length * 8) {
          grid[y][x] = ((data[at >>> 3] >>> (7 - (at & 7))) & 1) === 1;
          at++;
        }
      }
    }
  }
  const flip = mask => {
    for (let y = 0; y < size; y++) for (let x = 0; x < size; x++) if (!fixed[y][x] && MASKS[mask](x, y)) grid[y][x] = !grid[y][x];
  };
  let best = 0;
  let least = Infinity;
  for (let mask = 0; mask < 8; mask++) {
    flip(mask);
    format(mask);
    const sum = penalty(grid);
    if (sum < least) { least = sum; best = mask; }
    flip(mask);
  }
  flip(best);
  format(best);
  return grid;
}
