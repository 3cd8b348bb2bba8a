#include "ui/record/plain_table.h"

#include <QHeaderView>
#include <QTableWidget>

#include "ui/theme/breaking_delegate.h"
#include "ui/theme/plain_scroll_bar.h"
#include "ui/theme/plain_tip.h"
#include "ui/theme/target.h"

namespace wardchalk::ui {

void readByRows(QTableView& table) {
  table.setEditTriggers(QAbstractItemView::NoEditTriggers);
  table.setSelectionBehavior(QAbstractItemView::SelectRows);
  table.setSelectionMode(QAbstractItemView::SingleSelection);
  table.setTabKeyNavigation(false);
  table.setWordWrap(true);
  table.verticalHeader()->hide();
  table.horizontalHeader()->setDefaultAlignment(Qt::AlignLeft | Qt::AlignVCenter);
}

QTableWidget* plainTable(const QStringList& columns, const QString& spokenName, QWidget* parent) {
  auto* table = new QTableWidget(0, static_cast<int>(columns.size()), parent);
  table->setHorizontalHeaderLabels(columns);
  table->setAccessibleName(spokenName);
  readByRows(*table);
  table->setItemDelegate(new BreakingDelegate(table));
  table->setVerticalScrollBar(new PlainScrollBar(Qt::Vertical));
  table->setHorizontalScrollMode(QAbstractItemView::ScrollPerPixel);
  table->setVerticalScrollMode(QAbstractItemView::ScrollPerPixel);
  table->horizontalHeader()->setHighlightSections(false);
  table->horizontalHeader()->setMinimumHeight(leastTarget);
  return table;
}

void addRow(QTableWidget& table, const QStringList& texts) {
  const int row = table.rowCount();
  table.insertRow(row);
  for (int column = 0; column < texts.size(); ++column) {
    auto* item = new QTableWidgetItem(texts[column]);
    item->setTextAlignment(Qt::AlignLeft | Qt::AlignVCenter);
    item->setToolTip(plainTip(texts[column]));
    table.setItem(row, column, item);
  }
}

void shareWidth(QTableView& table, std::span<const double> parts) {
  const int whole = table.viewport()->width();
  for (std::size_t i = 0; i < parts.size(); ++i)
    table.setColumnWidth(static_cast<int>(i), static_cast<int>(whole * parts[i]));
}

}  // namespace wardchalk::ui
