#include "ui/working/metrics.h"

#include <QGuiApplication>

namespace wardchalk::ui {

namespace {

struct Size {
  int pixels;
  bool bold;
  bool inChain;  ///< shrinks with the chain when that would not fit
};

Size sizeOf(FontRole role) {
  switch (role) {
    case FontRole::disc:
      return {14, true, false};
    case FontRole::question:
      return {15, true, false};
    case FontRole::aside:
      return {13, false, false};
    case FontRole::number:
      return {18, false, true};
    case FontRole::result:
      return {20, true, true};
    case FontRole::power:
      return {12, false, true};
    case FontRole::big:
      return {22, true, true};
    case FontRole::words: return {18, true, true};
    case FontRole::badge:
      return {15, true, false};
    case FontRole::tag:
      return {12, false, false};
    case FontRole::letter:
      return {12, true, true};
    case FontRole::figure:
      return {12, false, false};
    case FontRole::mark:
      return {12, true, false};
    case FontRole::body:
      return {15, false, false};
  }
  return {13, false, false};
}

}  // namespace

Type Metrics::type(FontRole role) const {
  const Size size = sizeOf(role);
  const double scaled = size.pixels * scale * (size.inChain ? chainScale : 1);
  return {qMax(1, qRound(scaled)), size.bold};
}

QFont fontOf(const Type& type, const QString& family) {
  QFont font = family.isEmpty() ? QGuiApplication::font() : QFont(family);
  font.setPixelSize(type.pixels);
  font.setBold(type.bold);
  font.setHintingPreference(QFont::PreferNoHinting);
  return font;
}

}  // namespace wardchalk::ui
