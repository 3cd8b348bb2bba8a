#pragma once

#include <QAbstractTableModel>
#include <QStyledItemDelegate>
#include <array>
#include <vector>

#include "ui/record/case_rows.h"

namespace wardchalk::ui {

/// The rows of several cases for a table view.
class CasesModel : public QAbstractTableModel {
  Q_OBJECT

 public:
  enum Column : std::uint8_t { place, title, verdict, reason, needs, columnCountAll };
  /// Where the kind of the verdict is; nothing when the case could not be read.
  static constexpr int verdictRole = Qt::UserRole + 1;
  /// What was not checked, in words; empty when everything was.
  static constexpr int notMadeRole = Qt::UserRole + 2;

  explicit CasesModel(QObject* parent) : QAbstractTableModel(parent) {}

  void clear();
  void add(std::vector<CaseRow> rows);
  [[nodiscard]] const std::vector<CaseRow>& rows() const { return rows_; }
  /// How many have this verdict; the last place counts those that could not be read.
  [[nodiscard]] const std::array<int, 6>& counts() const { return counts_; }

  /// Where the case of a row stands: "class_set.csv, row 5".
  [[nodiscard]] QString placeOf(int row) const { return index(row, place).data().toString(); }

  [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
  [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
  [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
  [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

 private:
  [[nodiscard]] QString text(const CaseRow& row, int column) const;

  std::vector<CaseRow> rows_;
  std::array<int, 6> counts_{};
};

/// Paints a verdict as the flag does: its sign, its words, its colour.
class VerdictDelegate : public QStyledItemDelegate {
  Q_OBJECT

 public:
  using QStyledItemDelegate::QStyledItemDelegate;
  void paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const override;
};

}  // namespace wardchalk::ui
