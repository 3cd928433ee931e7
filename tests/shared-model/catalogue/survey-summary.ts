import type { Group } from './survey-file.ts';

export interface SummaryRow {
  readonly measure: string;
  readonly group: Group;
  readonly figures: readonly number[];
}

const row = (measure: string, group: Group, ...figures: number[]): SummaryRow => ({
  measure,
  group,
  figures,
});

/**
 * Summary of the survey's columns, mm: measure, group, n, mean, SD, P5, P25, P50, P75, P95.
 * Source: ANSUR II public working databases (Gordon et al., NATICK/TR-15/007, 2014), computed independently of this
 * project; 23 of 23 figures that copies of the official report give agree. Percentiles by linear interpolation,
 * h = (n - 1) p + 1; SD with n - 1; `pooled` is the plain concatenation of both files.
 */
export const SUMMARY: readonly SummaryRow[] = [
  row('stature', 'F', 1986, 1628.5, 64.2, 1525.0, 1586.2, 1626.0, 1672.0, 1740.0),
  row('stature', 'M', 4082, 1756.2, 68.6, 1648.0, 1710.0, 1755.0, 1802.0, 1870.0),
  row('stature', 'pooled', 6068, 1714.4, 90.0, 1563.0, 1651.8, 1719.0, 1779.0, 1855.0),
  row('eyeheightsitting', 'F', 1986, 747.7, 30.4, 698.0, 727.0, 748.0, 768.0, 799.0),
  row('eyeheightsitting', 'M', 4082, 804.5, 33.2, 750.0, 782.0, 804.0, 827.0, 860.0),
  row('eyeheightsitting', 'pooled', 6068, 785.9, 41.9, 715.0, 757.0, 787.0, 815.0, 853.0),
  row('sittingheight', 'F', 1986, 856.6, 33.1, 803.0, 834.0, 857.0, 879.0, 912.0),
  row('sittingheight', 'M', 4082, 918.3, 35.7, 860.0, 894.2, 918.0, 943.0, 977.0),
  row('sittingheight', 'pooled', 6068, 898.1, 45.3, 821.0, 866.0, 900.0, 930.0, 969.0),
  row('acromialheight', 'F', 1986, 1335.1, 58.1, 1242.0, 1298.0, 1332.0, 1374.0, 1433.8),
  row('acromialheight', 'M', 4082, 1440.7, 63.3, 1339.0, 1398.0, 1439.0, 1481.0, 1546.0),
  row('acromialheight', 'pooled', 6068, 1406.2, 79.1, 1275.0, 1350.0, 1410.0, 1462.0, 1532.0),
  row('thumbtipreach', 'F', 1986, 744.0, 42.8, 674.2, 715.0, 742.0, 772.0, 816.0),
  row('thumbtipreach', 'M', 4082, 811.9, 43.7, 742.0, 782.0, 811.0, 838.0, 886.0),
  row('thumbtipreach', 'pooled', 6068, 789.7, 53.8, 701.0, 753.0, 792.0, 826.0, 876.6),
  row('span', 'F', 1986, 1660.3, 83.0, 1529.0, 1605.0, 1657.0, 1712.8, 1802.8),
  row('span', 'M', 4082, 1814.2, 84.6, 1680.0, 1757.0, 1812.0, 1868.8, 1957.0),
  row('span', 'pooled', 6068, 1763.8, 110.8, 1577.0, 1686.8, 1771.0, 1842.0, 1938.0),
  row('biacromialbreadth', 'F', 1986, 365.3, 18.3, 335.0, 353.0, 365.0, 378.0, 396.0),
  row('biacromialbreadth', 'M', 4082, 415.7, 19.2, 384.0, 403.0, 415.0, 428.0, 447.0),
  row('biacromialbreadth', 'pooled', 6068, 399.2, 30.2, 347.0, 376.0, 404.0, 421.0, 444.0),
  row('bideltoidbreadth', 'F', 1986, 450.3, 28.7, 406.0, 430.0, 450.0, 469.0, 499.0),
  row('bideltoidbreadth', 'M', 4082, 510.4, 32.5, 459.0, 489.0, 509.0, 531.0, 567.0),
  row('bideltoidbreadth', 'pooled', 6068, 490.8, 42.1, 421.0, 460.0, 492.0, 520.0, 558.0),
  row('forearmforearmbreadth', 'F', 1986, 494.8, 41.0, 432.0, 466.0, 492.0, 520.0, 563.8),
  row('forearmforearmbreadth', 'M', 4082, 579.9, 50.9, 497.1, 545.0, 579.0, 613.0, 667.0),
  row('forearmforearmbreadth', 'pooled', 6068, 552.1, 62.4, 452.0, 505.0, 553.0, 597.0, 655.0),
  row('elbowrestheight', 'F', 1986, 232.4, 26.2, 189.0, 215.0, 233.0, 251.0, 275.8),
  row('elbowrestheight', 'M', 4082, 245.0, 28.7, 197.0, 226.0, 246.0, 265.0, 291.0),
  row('elbowrestheight', 'pooled', 6068, 240.9, 28.5, 193.0, 222.0, 241.0, 261.0, 286.0),
  row('waistheightomphalion', 'F', 1986, 980.1, 50.0, 900.0, 947.0, 977.5, 1013.0, 1064.0),
  row('waistheightomphalion', 'M', 4082, 1056.5, 52.2, 972.0, 1020.0, 1055.0, 1090.0, 1145.0),
  row('waistheightomphalion', 'pooled', 6068, 1031.5, 62.7, 928.0, 988.0, 1033.0, 1076.0, 1132.0),
  row('headbreadth', 'F', 1986, 147.8, 5.2, 140.0, 144.0, 147.0, 151.0, 156.0),
  row('headbreadth', 'M', 4082, 154.3, 5.5, 146.0, 151.0, 154.0, 158.0, 163.0),
  row('headbreadth', 'pooled', 6068, 152.2, 6.2, 142.0, 148.0, 152.0, 156.0, 162.0),
  row('headlength', 'F', 1986, 189.8, 7.4, 178.0, 185.0, 190.0, 195.0, 202.0),
  row('headlength', 'M', 4082, 199.5, 7.0, 188.0, 195.0, 200.0, 204.0, 211.0),
  row('headlength', 'pooled', 6068, 196.3, 8.5, 182.0, 191.0, 197.0, 202.0, 210.0),
  row('tragiontopofhead', 'F', 1986, 126.5, 6.5, 116.0, 122.0, 127.0, 131.0, 137.0),
  row('tragiontopofhead', 'M', 4082, 131.1, 6.2, 121.0, 127.0, 131.0, 135.0, 141.0),
  row('tragiontopofhead', 'pooled', 6068, 129.6, 6.7, 118.0, 125.0, 130.0, 134.0, 140.0),
];
