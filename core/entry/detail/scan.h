#pragma once

#include <boost/container/small_vector.hpp>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace wardchalk::entry {

/// What a piece of a written entry is by itself. Which unit, number or other word a word is, its place says.
enum class TokenKind : std::uint8_t {
  number,   ///< digits with the points and commas among them, as they stand
  word,     ///< letters, "µ" among them; "b.i.d." with its points
  sign,     ///< one sign: / - – ÷ × % : ½ ² …
  unseen,   ///< a character that nobody sees, or a break between lines
  foreign,  ///< digits of another script
  damaged,  ///< a byte that is part of no character
};

/// A piece of an entry and where it stands. Blanks, of whatever kind, are no pieces.
struct Token {
  TokenKind kind;
  std::string_view text;  ///< as typed, in the text that was scanned
  std::size_t at;         ///< its first byte
  bool spaced;            ///< a blank stands before it
};

/// The pieces of an entry; nearly every one has no more, and its cursor asks for no memory: "every 4 to 6 h
/// as needed".
using Tokens = boost::container::small_vector<Token, 8>;

/// Cuts an entry into its pieces, from left to right, each byte but those of blanks in one of them. Blanks at
/// the ends and their number mean nothing. Any bytes are cut.
[[nodiscard]] Tokens scan(std::string_view text);

/// A place among the pieces of an entry, for readers that go from left to right.
class Cursor {
 public:
  explicit Cursor(std::string_view text) : text_(text), tokens_(scan(text)) {}

  [[nodiscard]] bool atEnd() const { return at_ == tokens_.size(); }
  /// The piece so many further on; null behind the last.
  [[nodiscard]] const Token* peek(std::size_t further = 0) const {
    return at_ + further < tokens_.size() ? &tokens_[at_ + further] : nullptr;
  }
  [[nodiscard]] bool isNumber(std::size_t further = 0) const { return isKind(TokenKind::number, further); }
  [[nodiscard]] bool isWord(std::size_t further = 0) const { return isKind(TokenKind::word, further); }
  /// Whether the word, in any capitals, stands here.
  [[nodiscard]] bool isWord(std::string_view low, std::size_t further = 0) const;
  [[nodiscard]] bool isSign(std::string_view sign, std::size_t further = 0) const;
  /// Whether the piece follows the one before it without a blank.
  [[nodiscard]] bool isJoined(std::size_t further = 0) const;

  const Token& take() { return tokens_[at_++]; }
  bool takeWord(std::string_view low);
  bool takeSign(std::string_view sign);

  [[nodiscard]] std::size_t place() const { return at_; }
  void goTo(std::size_t place) { at_ = place; }
  /// What was typed from this place on, up to where the cursor stands.
  [[nodiscard]] std::string_view typedFrom(std::size_t place) const;
  /// What was typed from this place on as far as pieces stand together.
  [[nodiscard]] std::string_view joinedFrom(std::size_t place) const;
  /// What is left, as typed.
  [[nodiscard]] std::string_view rest() const;
  [[nodiscard]] std::string_view text() const { return text_; }
  [[nodiscard]] const Tokens& tokens() const& { return tokens_; }
  [[nodiscard]] const Tokens& tokens() const&& = delete;  // would go with its cursor

 private:
  [[nodiscard]] bool isKind(TokenKind kind, std::size_t further) const {
    const Token* token = peek(further);
    return token && token->kind == kind;
  }

  std::string_view text_;
  Tokens tokens_;
  std::size_t at_ = 0;
};

/// The pieces in small letters, with one blank where blanks stand: as tables of whole phrases are written.
[[nodiscard]] std::string plainText(const Cursor& cursor);

/// A dash between two ends of a range, or "to": the cursor goes behind it. A minus sign is none.
bool takeRangeWord(Cursor& cursor);

}  // namespace wardchalk::entry
