"""Body surface area by whole-number roots, as a second opinion.

Prints one line for each height and weight of the grid, both in tenths: the surface by cm and kg over 3600 and by
inches and pounds over 3131, each rounded half up to 2, 3, 4 and 20 decimals and written without the point.
"""

from fractions import Fraction
from math import isqrt


def root_rounded(square: Fraction, decimals: int) -> int:
    """The root of `square` in units of the last decimal: the largest r with (2r - 1)^2 <= 4 * square."""
    scaled = 4 * square * 10 ** (2 * decimals)
    return (isqrt(scaled.numerator // scaled.denominator) + 1) // 2


def main() -> None:
    for height in range(400, 1801, 7):
        for weight in range(20, 901, 7):
            product = Fraction(height, 10) * Fraction(weight, 10)
            roots = [root_rounded(product / divisor, decimals)
                     for divisor in (3600, 3131) for decimals in (2, 3, 4, 20)]
            print(height, weight, *roots)


if __name__ == "__main__":
    main()
