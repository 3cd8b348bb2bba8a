#pragma once

#include <QString>
#include <cstdint>
#include <optional>
#include <span>
#include <string_view>

#include "core/record/case_draft.h"

namespace wardchalk::ui {

/// The groups of the form, in the order of the papers on the desk.
enum class FieldGroup : std::uint8_t { child, order, reference, stock, infusion };

/// What a field holds: free words or one of a few, a tick, or an entry that is read and said back.
enum class FieldKind : std::uint8_t { words, flag, quantity };

/// When a field is in view while it is empty; one that holds something always is.
enum class InView : std::uint8_t { always, unfolded, powder, solid, asNeeded };

/// One of a field's fixed words: its id in files and what the nurse reads.
struct ChoiceWord {
  std::string_view id;
  const char* words;
};

/// All that the form knows of a field. The spellings it offers come from the core.
struct FieldSpec {
  std::string_view path;
  FieldGroup group;
  FieldKind kind;
  InView inView;
  int columns;        ///< of twelve
  const char* label;  ///< English, with its mnemonic; translated in the context "Field"
  const char* hint;   ///< what the quiet line says while the field is empty; may be null
  std::span<const ChoiceWord> choices = {};
};

/// Every field of the form, in the order of the keyboard.
[[nodiscard]] std::span<const FieldSpec> fieldTable();

[[nodiscard]] const FieldSpec& fieldSpec(std::string_view path);

/// The label with its mnemonic, and without.
[[nodiscard]] QString labelOf(const FieldSpec& spec);
[[nodiscard]] QString nameOf(const FieldSpec& spec);
[[nodiscard]] QString nameOf(QString label);
/// The label beside this kind of stock: of a powder the label tells the strength after mixing.
[[nodiscard]] QString labelOf(const FieldSpec& spec, std::string_view stockKind);
/// One of its fixed words as the nurse reads it.
[[nodiscard]] QString wordsOf(const ChoiceWord& choice);

/// The heading of a group, and what its button promises to unfold.
[[nodiscard]] QString headingOf(FieldGroup group);
[[nodiscard]] QString moreOf(FieldGroup group);

/// The first field, in the order of the form, whose entry cannot be read; a case file has its keys in another
/// order, and a hand goes from the top.
[[nodiscard]] std::optional<std::string_view> firstRefused(const CaseDraft& draft);

}  // namespace wardchalk::ui
