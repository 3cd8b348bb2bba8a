#include "ui/record/cases_model.h"

#include <QPainter>

#include "ui/theme/board_palette.h"
#include "ui/theme/plain_tip.h"
#include "ui/theme/text.h"
#include "ui/working/verdict_sign.h"

namespace wardchalk::ui {

namespace {

constexpr int signSize = 20;
constexpr int gap = 6;

std::size_t countPlace(const CaseRow& row) {
  return row.verdict ? static_cast<std::size_t>(*row.verdict) : 5;
}

}  // namespace

void CasesModel::clear() {
  beginResetModel();
  rows_.clear();
  rows_.shrink_to_fit();
  counts_.fill(0);
  endResetModel();
}

void CasesModel::add(std::vector<CaseRow> rows) {
  if (rows.empty()) return;
  const int first = rowCount();
  beginInsertRows({}, first, first + static_cast<int>(rows.size()) - 1);
  for (CaseRow& row : rows) {
    ++counts_[countPlace(row)];
    rows_.push_back(std::move(row));
  }
  endInsertRows();
}

int CasesModel::rowCount(const QModelIndex& parent) const {
  return parent.isValid() ? 0 : static_cast<int>(rows_.size());
}

int CasesModel::columnCount(const QModelIndex& parent) const { return parent.isValid() ? 0 : columnCountAll; }

QString CasesModel::text(const CaseRow& row, int column) const {
  switch (column) {
    case place:
      return row.given.number > 1 || row.source->isTable
                 ? tr("%1, row %2", "file, row")
                       .arg(outside(row.source->name), QString::number(row.given.number))
                 : outside(row.source->name);
    case title:
      return outside(row.title);
    case verdict:
      return row.verdict ? fromCore(row.words) : tr("cannot be read");
    case reason:
      return fromCore(row.reason);
    default:
      return fromCore(row.needs);
  }
}

QVariant CasesModel::data(const QModelIndex& index, int role) const {
  // A view asks for the text of its current row to copy it, also when there is none.
  if (!index.isValid() || index.row() >= rowCount()) return {};
  const CaseRow& row = rows_[static_cast<std::size_t>(index.row())];
  if (role == Qt::DisplayRole) return text(row, index.column());
  if (role == Qt::ToolTipRole) return plainTip(text(row, index.column()));
  if (role == Qt::TextAlignmentRole) return QVariant(Qt::AlignLeft | Qt::AlignVCenter);
  if (role == notMadeRole) return fromCore(row.notMade);
  if (role == verdictRole && row.verdict) return static_cast<int>(*row.verdict);
  return {};
}

QVariant CasesModel::headerData(int section, Qt::Orientation orientation, int role) const {
  if (orientation == Qt::Vertical || role != Qt::DisplayRole) return {};
  if (section < 0 || section >= columnCountAll) return {};
  const std::array names = {tr("From"), tr("Title"), tr("Verdict"), tr("Why"), tr("Still needed")};
  return names[static_cast<std::size_t>(section)];
}

void VerdictDelegate::paint(QPainter* painter, const QStyleOptionViewItem& option,
                            const QModelIndex& index) const {
  const QVariant kind = index.data(CasesModel::verdictRole);
  if (!kind.isValid()) return QStyledItemDelegate::paint(painter, option, index);
  const auto verdict = static_cast<VerdictKind>(kind.toInt());
  FlagColours colours = flagColours(verdict, schemeFor(option.palette));
  if (verdict == VerdictKind::undecided)
    colours = {option.palette.color(QPalette::Base), option.palette.color(QPalette::Text)};
  const QRect cell = option.rect.adjusted(1, 1, -1, -1);
  painter->save();
  painter->fillRect(cell, colours.fill);
  const QRect sign(cell.left() + gap, cell.center().y() - signSize / 2 + 1, signSize, signSize);
  paintVerdictSign(*painter, verdict, sign, colours);
  painter->setPen(colours.ink);
  painter->setFont(option.font);
  const QRect words = cell.adjusted(signSize + 2 * gap, 0, -gap, 0);
  painter->drawText(words, Qt::AlignVCenter | Qt::AlignLeft | Qt::TextWordWrap, index.data().toString());
  if (option.state.testFlag(QStyle::State_Selected)) {
    painter->setPen(QPen(option.palette.color(QPalette::Highlight), 3));
    painter->drawRect(option.rect.adjusted(1, 1, -2, -2));
  }
  painter->restore();
}

}  // namespace wardchalk::ui
