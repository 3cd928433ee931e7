/**
 * Percentile points of the survey, mm.
 *
 * Source: ANSUR II (see sources.ts). Stature: P1 to P99 of the women, of the men (linear interpolation between
 * order statistics, h = (n - 1) p + 1) and of both with the sexes weighted equally (least value that the share
 * p does not exceed). A normal curve with the same mean and SD would be out by up to 6, 11 and 20 mm at the ends.
 */

import type { Millimetres, Population } from '../document/records.ts';

const STATURE: Readonly<Record<Population, readonly Millimetres[]>> = {
  female: [
    1482.55, 1498.7, 1509.55, 1519, 1525, 1530, 1534, 1539, 1543, 1547, 1552, 1556.2, 1559, 1561, 1563, 1566,
    1568, 1571, 1573, 1575, 1578, 1582, 1583, 1585, 1586.25, 1588, 1590, 1591, 1593, 1595, 1596, 1598, 1599,
    1600.9, 1603, 1604, 1606, 1608, 1609, 1611, 1612, 1614, 1615, 1616, 1617.25, 1619, 1620, 1623, 1625, 1626,
    1628, 1629, 1631, 1632, 1634, 1636, 1637, 1639, 1641, 1643, 1645, 1646, 1648, 1650, 1653, 1654, 1656,
    1658, 1659, 1661, 1663, 1665, 1667.05, 1670, 1672, 1673.6, 1675, 1676, 1679, 1681, 1683, 1685, 1688, 1690,
    1696, 1699, 1702.95, 1705.8, 1709, 1713, 1717.35, 1720, 1728, 1732, 1740, 1745, 1752, 1764.6, 1777.6,
  ],
  male: [
    1601.62, 1621, 1634, 1640, 1648, 1653, 1657, 1661, 1665, 1669, 1673, 1675, 1679, 1681, 1685, 1687,
    1689.77, 1693, 1696, 1699, 1702, 1704, 1706, 1708, 1710, 1712, 1714, 1716, 1718, 1720, 1722, 1723, 1725,
    1727, 1729, 1730, 1733, 1735, 1736, 1738, 1739.21, 1740, 1743, 1744, 1745, 1747.26, 1749, 1751, 1753,
    1755, 1757, 1759, 1761, 1763, 1764, 1766, 1767.17, 1770, 1772, 1773, 1774, 1777, 1779, 1780, 1782, 1784,
    1785, 1787.08, 1789, 1791, 1793, 1795, 1798, 1800, 1802, 1804, 1805, 1808, 1810, 1813, 1815, 1818, 1821,
    1823, 1827, 1830, 1833, 1836, 1840, 1844, 1848, 1853, 1858, 1863, 1870, 1878.76, 1890, 1904.38, 1927,
  ],
  pooled: [
    1498, 1519, 1530, 1539, 1547, 1556, 1561, 1565, 1570, 1574, 1580, 1584, 1587, 1590, 1594, 1597, 1600,
    1603, 1606, 1609, 1611, 1614, 1617, 1619, 1623, 1625, 1628, 1631, 1634, 1636, 1639, 1642, 1645, 1648,
    1651, 1654, 1657, 1659, 1661, 1664, 1666, 1670, 1672, 1674, 1676, 1679, 1681, 1684, 1687, 1689, 1692,
    1696, 1699, 1702, 1705, 1707, 1710, 1712, 1715, 1718, 1720, 1723, 1726, 1728, 1731, 1734, 1736, 1740,
    1742, 1744, 1747, 1750, 1753, 1756, 1760, 1763, 1766, 1769, 1772, 1775, 1779, 1782, 1785, 1789, 1792,
    1796, 1800, 1805, 1809, 1814, 1819, 1824, 1830, 1836, 1844, 1853, 1863, 1879, 1905,
  ],
};

/** Shoulder joint to fingertip at P5 and P95: the arm that everybody, and that hardly anybody, has. */
export const ARM_LENGTH_ENDS: Readonly<Record<Population, readonly [Millimetres, Millimetres]>> = {
  female: [590.6, 710],
  male: [640, 761.5],
  pooled: [601, 748],
};

/** Stature at a percentile from 1 to 99, straight between whole percentiles; beyond them the end holds. */
export function statureAt(population: Population, percentile: number): Millimetres {
  const points = STATURE[population];
  const place = Math.min(Math.max(percentile, 1), points.length) - 1;
  const below = Math.floor(place);
  const [low, high] = [points[below] ?? NaN, points[Math.min(below + 1, points.length - 1)] ?? NaN];
  return low + (high - low) * (place - below);
}
