/** Numbers that look random and are the same for the same seed. The generator is Steele and Vigna's SplitMix in 32 bits as it is commonly written (from memory). */
export class Random {
  #state;

  constructor(seed, index = 0) {
    this.#state = (Math.imul(seed, 0x9e3779b1) ^ Math.imul(index + 1, 0x85ebca6b)) >>> 0;
    this.next();
    this.next();
  }

  /** From 0 up to, not including, 1. */
  next() {
    this.#state = (this.#state + 0x9e3779b9) >>> 0;
    let mixed = this.#state;
    mixed = Math.imul(mixed ^ (mixed >>> 16), 0x21f0aaad);
    mixed = Math.imul(mixed ^ (mixed >>> 15), 0x735a2d97);
    return ((mixed ^ (mixed >>> 15)) >>> 0) / 4294967296;
  }

  /** A whole number from 0 up to, not including, count. */
  below(count) {
    return Math.floor(this.next() * count);
  }

  between(from, to) {
    return from + this.next() * (to - from);
  }

  chance(share) {
    return this.next() < share;
  }

  pick(list) {
    return list[this.below(list.length)];
  }

  /** One of the names, each as often as its weight says. */
  weighted(weights) {
    let left = this.next() * Object.values(weights).reduce((sum, weight) => sum + weight, 0);
    for (const [name, weight] of Object.entries(weights)) {
      left -= weight;
      if (left < 0) return name;
    }
    return Object.keys(weights)[0];
  }
}
