#pragma once

#include <QHash>
#include <algorithm>
#include <vector>

#include "core/working/chain.h"
#include "ui/working/box.h"

namespace wardchalk::ui::detail {

/// A body with the word below it that says where it comes from. Set side by side, the words stand on one line
/// however deep the bodies are.
struct Piece {
  Box body;
  Box tag;
  [[nodiscard]] double width() const { return std::max(body.width, tag.width); }
};

/// The width of the widest of them.
[[nodiscard]] double widestOf(const std::vector<Piece>& pieces);

/// Pieces in reading order, broken into lines no wider than `width`; a piece stands whole.
[[nodiscard]] Box piecesBox(std::vector<Piece> pieces, double gap, const Metrics& metrics, double width);

/// The words for where these terms come from, each lighting up with its number; said once where terms share
/// it.
[[nodiscard]] Box tagsBox(const std::vector<const Term*>& terms, const QHash<QString, QString>& tags,
                          const Metrics& metrics, double width);

/// A quiet word under something that comes from nowhere: "2 decimals".
[[nodiscard]] Box quietBox(const QString& word, const Metrics& metrics, double width);

}  // namespace wardchalk::ui::detail
