/** Plays a short tone at each half of the beat, generated without a file. Off until the user switches it on. */
export class Beat {
  #audio: AudioContext | undefined;
  #last: string | undefined;

  get on(): boolean {
    return this.#audio !== undefined;
  }

  /** Switches the sound on or off; browsers require a user gesture. */
  toggle(): void {
    if (this.#audio) this.silence();
    else this.#audio = new AudioContext();
  }

  /** Switches the sound off, and lets go of the loudspeaker. */
  silence(): void {
    void this.#audio?.close();
    this.#audio = undefined;
  }

  /** Sounds when the half of the beat changes. */
  sound(half: 'open' | 'close'): void {
    if (half === this.#last) return;
    this.#last = half;
    const audio = this.#audio;
    if (!audio) return;
    const tone = audio.createOscillator();
    const volume = audio.createGain();
    const now = audio.currentTime;
    tone.frequency.value = half === 'close' ? 660 : 440;
    volume.gain.setValueAtTime(0.15, now);
    volume.gain.exponentialRampToValueAtTime(0.001, now + 0.09);
    tone.connect(volume).connect(audio.destination);
    tone.start(now);
    tone.stop(now + 0.1);
  }
}
