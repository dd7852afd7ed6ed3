/** A bag of powder and what it makes. */
export interface BagMix {
  bagKg: number;
  /** Litres of water to a kilogram of powder. */
  waterLPerKg: number;
  /** Mixed mortar, kg/m³. */
  densityKgM3: number;
}

/** Litres of mixed mortar from one bag: powder and water over fresh density (conservation of mass; a litre of water weighs 1 kg). */
export const yieldLitres = ({ bagKg, waterLPerKg, densityKgM3 }: BagMix): number =>
  (bagKg * (1 + waterLPerKg)) / (densityKgM3 / 1000);

/** Powder in one litre of mixed mortar, kg; also kg/m² for a millimetre of full bed. */
export const powderKgPerLitre = (mix: Omit<BagMix, 'bagKg'>): number => 1 / yieldLitres({ ...mix, bagKg: 1 });

/** Area one bag covers at a mean bed, m². */
export const areaPerBag = (bagYieldL: number, meanBedMm: number): number => bagYieldL / meanBedMm;

/** Water for a part of a bag, L: by weight, in proportion. */
export const partBagWater = (powderKg: number, waterLPerKg: number): number => powderKg * waterLPerKg;
