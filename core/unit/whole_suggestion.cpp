#include "core/unit/whole_suggestion.h"

#include <algorithm>
#include <array>

#include "core/number/ascii.h"

namespace wardchalk {

namespace {

constexpr std::size_t mostKept =
    56;  // a longer piece may be cut in its refusal, and would be put in the wrong place
constexpr int mostPieces = 8;  // more than any entry has

bool isDigitOrPoint(char c) { return isDigit(c) || c == '.'; }

/// A letter of any script: "µ" begins with such a byte.
bool isWordByte(char c) { return isLetter(c) || static_cast<unsigned char>(c) >= 0x80; }

/// Whether text could be cut between these two: not inside a word or a number. "5cc" can be cut.
bool partsBetween(char before, char after) {
  return !(isWordByte(before) && isWordByte(after)) && !(isDigitOrPoint(before) && isDigitOrPoint(after));
}

/// Where the piece first stands by itself; readers go from left to right, so that it was refused there.
std::optional<std::size_t> placeOf(std::string_view piece, std::string_view text) {
  for (std::size_t at = text.find(piece); at != std::string_view::npos; at = text.find(piece, at + 1)) {
    const std::size_t end = at + piece.size();
    const bool begins = at == 0 || partsBetween(text[at - 1], piece.front());
    if (begins && (end == text.size() || partsBetween(piece.back(), text[end]))) return at;
  }
  return std::nullopt;
}

/// The unit of a refused piece: the "MU" of "1.2 MU", the "gm" of "1gm.".
std::string_view unitIn(std::string_view piece) {
  while (!piece.empty() && (isDigitOrPoint(piece.front()) || piece.front() == ' ')) piece.remove_prefix(1);
  while (!piece.empty() && piece.back() == '.') piece.remove_suffix(1);
  return piece;
}

/// Spellings with two meanings a thousand times and more apart, or that a stroke of the pen makes into
/// another (T02). The number beside them may belong to either, so none is offered. gm, gr, mgm: gram, grain,
/// microgram. M, K: million or thousand, or the first letter of another unit. l: a one.
bool isNeverRewritten(std::string_view piece) {
  constexpr std::array<std::string_view, 8> asWritten = {"Mg", "mG", "M", "m", "MU", "mU", "K", "mM"};
  constexpr std::array<std::string_view, 7> inAnyCapitals = {"gm",     "gms", "gr", "grain",
                                                             "grains", "mgm", "l"};
  const std::string_view unit = unitIn(piece);
  const auto same = [unit](std::string_view one) { return lowered(unit) == one; };
  return std::find(asWritten.begin(), asWritten.end(), unit) != asWritten.end() ||
         std::any_of(inAnyCapitals.begin(), inAnyCapitals.end(), same);
}

bool isAboutUnit(RefusalCode code) {
  return code == RefusalCode::unitUnknown || code == RefusalCode::unitUnsafe ||
         code == RefusalCode::spaceMissing;
}

/// The text with the refused piece put as its refusal says; no value where there is nothing sure to put.
std::optional<std::string> mended(std::string_view text, const Refusal& refusal) {
  if (refusal.suggestion.empty() || refusal.typed.empty() || refusal.typed.size() > mostKept)
    return std::nullopt;
  if (refusal.code == RefusalCode::leadingZero) return std::nullopt;  // "05" is 5, or 0.5 that lost its point
  if (isAboutUnit(refusal.code) && isNeverRewritten(refusal.typed)) return std::nullopt;
  const auto at = placeOf(refusal.typed, text);
  if (!at) return std::nullopt;
  return std::string(text).replace(*at, refusal.typed.size(), refusal.suggestion);
}

}  // namespace

std::string wholeSuggestion(std::string_view text, const Refusal& refusal, const ReadEntry& read) {
  std::string whole(text);
  Result<Done> entry = refusal;
  for (int piece = 0; !entry && piece < mostPieces; ++piece) {
    const std::optional<std::string> put = mended(whole, entry.refusal());
    if (!put) return {};
    whole = *put;
    entry = read(whole);
  }
  return entry ? whole : std::string();
}

}  // namespace wardchalk
