#include "core/entry/detail/number_words.h"

#include <array>

#include "core/number/ascii.h"

namespace wardchalk::entry {

namespace {

struct NumberWord {
  std::string_view word;
  int value;
};
constexpr std::array numberWords = {
#define WARDCHALK_NUMBER_WORD(word, value) NumberWord{word, value},
#include "core/entry/number_words.def"
#undef WARDCHALK_NUMBER_WORD
};

std::optional<int> valueAt(const Cursor& cursor, std::size_t further = 0) {
  if (!cursor.isWord(further)) return std::nullopt;
  for (const NumberWord& known : numberWords)
    if (isInSmallLetters(cursor.peek(further)->text, known.word)) return known.value;
  return std::nullopt;
}

/// "eighty-four": a ten and what is left of it.
std::optional<int> takeBelowHundred(Cursor& cursor) {
  const auto first = valueAt(cursor);
  if (!first) return std::nullopt;
  cursor.take();
  if (*first < 20) return first;
  const std::size_t next = cursor.isSign("-") ? 1 : 0;
  const auto rest = valueAt(cursor, next);
  if (!rest || *rest >= 10) return first;
  for (std::size_t i = 0; i <= next; ++i) cursor.take();
  return *first + *rest;
}

}  // namespace

std::optional<Number> takeNumberWords(Cursor& cursor) {
  const auto first = takeBelowHundred(cursor);
  if (!first) return std::nullopt;
  if (!cursor.takeWord("hundred")) return Number(*first);
  if (cursor.isWord("and") && valueAt(cursor, 1)) cursor.take();
  const auto rest = takeBelowHundred(cursor);
  return Number(*first * 100 + rest.value_or(0));
}

}  // namespace wardchalk::entry
