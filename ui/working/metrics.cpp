#include "ui/working/metrics.h"

#include <QGuiApplication>
#include <iterator>

namespace wardchalk::ui {

namespace {

struct Size {
  int pixels;
  bool bold;
  bool inChain;  ///< shrinks with the chain when that would not fit
};

/// In the order of FontRole.
constexpr Size sizes[] = {
    {15, true, false},   // disc
    {15, true, false},   // question
    {13, false, false},  // aside
    {18, false, true},   // number
    {20, true, true},    // result
    {12, false, true},   // power
    {22, true, true},    // big
    {18, true, true},    // words
    {15, true, false},   // badge
    {12, false, false},  // tag
    {12, true, true},    // letter
    {12, false, false},  // figure
    {12, true, false},   // mark
    {15, false, false},  // body
    {14, false, false},  // finding
    {22, true, false},   // flag
    {34, true, false},   // amount
    {24, true, false},   // dose
};
static_assert(std::size(sizes) == static_cast<std::size_t>(FontRole::dose) + 1);

/// The letter of a struck pair stays readable in a chain that is set smaller: 6 points.
constexpr int smallestLetter = 8;

}  // namespace

Type Metrics::type(FontRole role) const {
  const Size& size = sizes[static_cast<std::size_t>(role)];
  const double scaled = size.pixels * scale * (size.inChain ? chainScale : 1);
  return {qMax(role == FontRole::letter ? smallestLetter : 1, qRound(scaled)), size.bold};
}

QFont fontOf(const Type& type, const QString& family) {
  QFont font = family.isEmpty() ? QGuiApplication::font() : QFont(family);
  font.setPixelSize(type.pixels);
  font.setBold(type.bold);
  font.setHintingPreference(QFont::PreferNoHinting);
  // A hair of space between letters keeps "fi" two letters, so that words on paper can be searched for; in
  // percent, since an absolute one grows with the fineness of the printer.
  font.setLetterSpacing(QFont::PercentageSpacing, 100 + 1.0 / 64);
  return font;
}

}  // namespace wardchalk::ui
