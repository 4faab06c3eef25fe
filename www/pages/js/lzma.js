// Unpacks a file in the .lzma format, after the "LZMA specification" of Igor Pavlov (draft of 2015-06-14, public
// domain). All that came out serves as the window, and the size has to stand in the head.
// What is damaged comes out as something else, and never goes on for ever: who calls has a checksum to ask.
const unlzma = (packed) => {
  const head = new DataView(packed.buffer, packed.byteOffset);
  // lc, lp, pb: how many bits of the byte before, and of the position, choose the chances of a literal; and of the position those of the rest.
  const [before, literalPlace, place] = [packed[0] % 9, Math.floor(packed[0] / 9) % 5, Math.floor(packed[0] / 45)];
  const out = new Uint8Array(head.getUint32(5, true));
  let end = 0;

  // The chances of a 0, in 2048ths, each learning from its bits. All stand in one table, each kind in a room of its own.
  // The specification's names, in order: IsMatch, IsRep, IsRepG0 to G2, IsRep0Long, LenDecoder, RepLenDecoder,
  // PosSlotDecoder, PosDecoders, AlignDecoder, LitProbs.
  let rooms = 0;
  const room = (size) => (rooms += size) - size;
  const lengths = () => ({ choices: room(2), low: room(16 * 8), middle: room(16 * 8), high: room(256) });
  const isMatch = room(12 * 16);
  const isRepeat = room(12);
  const isOlder = [room(12), room(12), room(12)];
  const isLong = room(12 * 16);
  const [matchLengths, repeatLengths] = [lengths(), lengths()];
  const [slots, middles, lows] = [room(4 * 64), room(128), room(16)];
  const literals = room(768 * 2 ** (before + literalPlace));
  const chances = new Uint16Array(rooms).fill(1024);

  // The range decoder: first one bit by its chance, then bits of even chance.
  let range = 2 ** 32 - 1;
  let code = head.getUint32(14);
  let next = 18;
  const widen = () => {
    if (range >= 2 ** 24) return;
    range *= 256;
    code = code * 256 + packed[next++];
  };
  const bit = (at) => {
    const chance = chances[at];
    const bound = (range >>> 11) * chance;
    if (code < bound) {
      range = bound;
      chances[at] = chance + ((2048 - chance) >> 5);
      widen();
      return 0;
    }
    range -= bound;
    code -= bound;
    chances[at] = chance - (chance >> 5);
    widen();
    return 1;
  };
  const even = (bits) => {
    let value = 0;
    for (let i = 0; i < bits; i++) {
      range = Math.floor(range / 2);
      const one = code >= range ? 1 : 0;
      code -= one * range;
      value = value * 2 + one;
      widen();
    }
    return value;
  };
  // A number of some bits, each with a chance by those before it: from the highest, or from the lowest.
  const tree = (at, bits) => {
    let node = 1;
    for (let i = 0; i < bits; i++) node = node * 2 + bit(at + node);
    return node - 2 ** bits;
  };
  const backwards = (at, bits) => {
    let node = 1;
    let value = 0;
    for (let i = 0; i < bits; i++) {
      const one = bit(at + node);
      node = node * 2 + one;
      value += one * 2 ** i;
    }
    return value;
  };

  // What the last few were; below 7 the last was a literal.
  let state = 0;
  // The distances used last, the latest first.
  const recent = [1, 1, 1, 1];

  const literal = () => {
    const model = (end % 2 ** literalPlace) * 2 ** before + ((out[end - 1] ?? 0) >> (8 - before));
    const at = literals + 768 * model;
    let value = 1;
    // After a match this byte is likely not the one at its distance: the bits of that one count until one differs.
    if (state >= 7) {
      let other = out[end - recent[0]];
      for (let same = true; same && value < 256; other *= 2) {
        const expected = (other >> 7) & 1;
        const one = bit(at + 256 * (1 + expected) + value);
        value = value * 2 + one;
        same = one === expected;
      }
    }
    while (value < 256) value = value * 2 + bit(at + value);
    out[end++] = value;
    state = state < 4 ? 0 : state < 10 ? state - 3 : state - 6;
  };
  const copy = (length) => {
    const distance = recent[0];
    for (const stop = Math.min(end + length, out.length); end < stop; end++) out[end] = out[end - distance];
  };
  const length = ({ choices, low, middle, high }, at) => {
    if (!bit(choices)) return 2 + tree(low + 8 * at, 3);
    if (!bit(choices + 1)) return 10 + tree(middle + 8 * at, 3);
    return 18 + tree(high, 8);
  };
  const distance = (length) => {
    const slot = tree(slots + 64 * Math.min(length - 2, 3), 6);
    if (slot < 4) return 1 + slot;
    const bits = (slot >> 1) - 1;
    const least = (2 + (slot & 1)) * 2 ** bits;
    if (slot < 14) return 1 + least + backwards(middles + least - slot, bits);
    return 1 + least + even(bits - 4) * 16 + backwards(lows, 4);
  };

  while (end < out.length) {
    const at = end % 2 ** place;
    if (!bit(isMatch + 16 * state + at)) {
      literal();
    } else if (!bit(isRepeat + state)) {
      const long = length(matchLengths, at);
      state = state < 7 ? 7 : 10;
      recent.unshift(distance(long));
      recent.pop();
      copy(long);
    } else {
      let which = 0;
      while (which < 3 && bit(isOlder[which] + state)) which++;
      if (which === 0 && !bit(isLong + 16 * state + at)) {
        state = state < 7 ? 9 : 11;
        copy(1);
      } else {
        const long = length(repeatLengths, at);
        state = state < 7 ? 8 : 11;
        recent.unshift(...recent.splice(which, 1));
        copy(long);
      }
    }
  }
  return out;
};
