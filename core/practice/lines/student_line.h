#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

#include "core/number/number.h"
#include "core/practice/lines/line_codes.h"
#include "core/working/chain.h"

namespace wardchalk {

// A line of working as a student writes it: "120 mg/m² × 0.70 m² = 84 mg", "√(103 × 17.2 / 3600) ≈ 0.70 m²",
// "60 mg ≤ 84 mg", "3.2 mL". It is read more kindly than an entry at the bedside, and never silently: what
// was understood and should be written otherwise is a remark. Space never matters.
//
//   line      = [label ("=" | ":")] sum { relation sum }      a label is words: "BSA =", "safe dose ="
//   relation  = "=" | "≈" | "≤" | "≥" | "<" | ">"               also ~ <= >= equals
//   sum       = product { ("+" | "−") product }
//   product   = fraction { ("×" | "÷") fraction }             also * · x times, divided by; ")(" multiplies
//   fraction  = part { "/" part }                            also per, over, in ("120 mg in 5 mL"), each, a
//   part      = amount | root | "(" sum ")" [units] | units    units alone only after "/"
//   root      = "√" part | "sqrt" part
//   amount    = number [units] { number unit }               "7 lb 8 oz": falling parts of one dimension
//   units     = unit { ("·" unit) | ("/" unit) }             after a "/", "·" stays below: mg/kg·day
//
// Precedence. A slash binds tighter than × and ÷, and × and ÷ go from left to right. So
//   80 mg / 120 mg × 5 mL     is (80 mg/120 mg) × 5 mL       = 3.33 mL
//   80 mg × 5 mL/120 mg       is 80 mg × (5 mL/120 mg)       = 3.33 mL
//   168 mg/day ÷ 2 doses/day  is 168 mg/day ÷ (2 doses/day)  = 84 mg/dose
//   80 mg ÷ 120 mg/5 mL       is 80 mg ÷ (120 mg/5 mL)       = 3.33 mL
//   80 mg / 24 mg/mL          is 80 mg/(24 mg/mL)            = 3.33 mL
// The last, because a slash directly before a unit belongs to the number with that unit.
// A fraction that could honestly be read in two ways is refused with `unclearDivision` and its place, so that
// nobody is marked on a guess: after ÷, plain numbers with a slash ("100 ÷ 2/5", "18 mL ÷ 30/60 h"); three
// amounts with slashes of which the last has a unit ("80 mg/120 mg/5 mL"); a multiplication without a sign
// after a division ("6/2(3)"). Plain "100/2/5" goes from left to right. "1/2 tablet", "2 1/2 tablets" and
// "2½ tablets" are fractions of their unit (halves, thirds and quarters written without space).

/// Decimals to which a root that does not end is cut wherever a student's line is worked out: far more than
/// are written, so that cutting decides nothing.
inline constexpr int endlessRootDecimals = 20;

/// Bytes `begin` up to, not including, `end` of the line.
struct Span {
  std::size_t begin = 0;
  std::size_t end = 0;
  friend bool operator==(const Span&, const Span&) = default;
};

/// Why a line could not be read: where, what stands there and what to write instead, where that is known. For
/// `unlikeUnits` `typed` and `instead` are the units of the two sides.
struct LineFault {
  LineFaultCode code;
  Span at;
  std::string typed;    ///< at most 60 bytes of what stands there
  std::string instead;  ///< empty where nothing is certain
  friend bool operator==(const LineFault&, const LineFault&) = default;
};

/// Something that was understood and should be written otherwise.
struct LineRemark {
  LineRemarkCode code;
  Span at;  ///< the number or the unit, as it stands
  std::string typed;
  std::string instead;  ///< the safe form: "3", "0.6", "mcg", "mL"
  /// A number with no unit beside it: a trailing zero is no mistake if it turns out to be a surface in m².
  bool onBareNumber = false;
  friend bool operator==(const LineRemark&, const LineRemark&) = default;
};

/// Whether the numbers of a side have units written with them. `partly`: some have and some have not, counts
/// of 2 and more in plain numbers included ("103 cm × 17.2 kg ÷ 3600"). Which numbers may stand bare is for
/// the marker to say.
enum class UnitsWritten : std::uint8_t { none, partly, all };

/// Where the over and the under term of a factor of `LineSide::chain` stand; empty spans for a 1 that is not
/// written.
struct FactorPlace {
  Span over;
  Span under;
  friend bool operator==(const FactorPlace&, const FactorPlace&) = default;
};

/// What stands between two relations, worked out.
struct LineSide {
  Span at;
  Number value;       ///< exact; of a root that does not end, cut after 20 decimals
  bool exact = true;  ///< false: `value` is cut, a root in it does not end
  Units units;        ///< left after cancelling, the root's taken
  UnitsWritten written = UnitsWritten::none;
  /// What is left cannot be told, and the number can: a root of units that have none ("√(103 cm × 17.2 kg ÷
  /// 3600)", its constant without units), or a plain number over one with a unit ("400/120 mL", which may be
  /// meant of the whole). `units` is empty then, and `product.left` is what it is to the letter.
  bool unitsOpen = false;

  /// The side as factors multiplied together, as written; parentheses and roots inside a product are one
  /// factor each when they hold a sum or a root, and are multiplied in when they hold a product. `rooted`
  /// when the whole side is a root: `product.exact` is the exact radicand then. A side that is a sum, or 7 lb
  /// 8 oz, is one factor with its total.
  Chain chain;
  Product product;                  ///< cancel(chain): what cancels against what, and what is left
  std::vector<FactorPlace> places;  ///< as many as factors

  bool isSum = false;  ///< + or − stands at its top
  bool isAmount =
      false;  ///< one number with its units and nothing to work out: "84 mg", "50 mg/mL", "2½ tablets"
  bool isParts =
      false;  ///< parts of falling size, its value in the smallest (41 in), of pounds and ounces in pounds
  std::string typed;      ///< of an amount: its number as typed, "0.70"; else empty
  int rootDecimals = -1;  ///< of a root of one number, "√0.492": decimals typed under it; -1 else
  int decimals = -1;  ///< of an amount: decimals typed (2 for "0.70"); -1 else, and for fractions and parts
};

enum class LineRelation : std::uint8_t { equal, about, atMost, atLeast, below, above };

/// Whether the relation holds between two numbers as they stand; "≈" as "=".
[[nodiscard]] bool relationHolds(const Number& left, LineRelation relation, const Number& right);

/// How the units of two sides meet.
enum class UnitsMeet : std::uint8_t {
  same,
  converted,   ///< one dimension in two units: 0.08 g and 80 mg, 37 lb and 16.8 kg
  perLeftOut,  ///< they differ in "per dose" or "per day" alone, which one side leaves out
  bare,  ///< one side (or both) has no units written, or not with every number ("37 lb ÷ 2.2 = 16.8 kg"), or
         ///< its units cannot be told
  differ,
};

/// How a relation stands to the numbers. Where units `differ` or are `bare` the numbers are compared as they
/// stand. Pounds may be taken by either house rule. For "=" and "≈" the one amount is rounded to the decimals
/// of the other.
enum class Truth : std::uint8_t {
  exact,    ///< "=": equal; "≤", "≥", "<", ">": it holds
  rounded,  ///< equal when rounded, half up, to the decimals typed: "≈" is due
  cut,      ///< equal when cut at the decimals typed, and not when rounded
  wrong,    ///< a wrong sum when the set-up is right
};

/// A relation between side i and side i + 1.
struct LineLink {
  LineRelation relation;
  Span at;
  UnitsMeet units;
  Truth truth;
  /// "=" stands where "≈" is due.
  [[nodiscard]] bool aboutIsDue() const {
    return relation == LineRelation::equal && (truth == Truth::rounded || truth == Truth::cut);
  }
};

/// A gram in a line: of medicine (`Unit::g`) or of the child (`Unit::bodyG`).
enum class Gram : std::uint8_t { medicine, child };

/// A line that was read.
struct StudentLine {
  std::string label;                ///< "BSA" of "BSA = 0.70 m²"; empty without one
  std::vector<LineSide> sides;      ///< at least one
  std::vector<LineLink> links;      ///< one fewer than sides
  std::vector<LineRemark> remarks;  ///< in the order of their places
  std::optional<Gram> gram;         ///< which gram was meant, when "g" stands in the line
  bool gramUnsure = false;          ///< both readings fit: `gram` is the one asked for
};

/// Longest line that is read, in bytes, and the deepest nesting of parentheses and roots.
inline constexpr std::size_t longestLine = 1000;
inline constexpr int deepestParentheses = 24;

/// A line or the reason why it cannot be read.
using ReadLine = std::variant<StudentLine, LineFault>;

/// Reads a line (UTF-8; any bytes are answered). A "g" is read as medicine's and as the child's, all of a
/// line alike. The reading under which the units of more sides meet is taken ("3400 g = 3.4 kg" is the
/// child's, "0.08 g = 80 mg" medicine); where both fit as well ("3400 g", "0.5 g/kg × 15 kg"), it is
/// `gramMeant`, what the marker asks for.
[[nodiscard]] ReadLine readStudentLine(std::string_view text, Gram gramMeant = Gram::medicine);

}  // namespace wardchalk
