#include "ui/record/import_report.h"

#include <QHeaderView>
#include <QLabel>
#include <QPushButton>
#include <QTableWidget>
#include <QVBoxLayout>

#include "core/words/sentences.h"
#include "ui/record/plain_table.h"
#include "ui/theme/text.h"

namespace wardchalk::ui {

namespace {

constexpr QSize reportSize(860, 520);

QTableWidget* refusedRows(const std::vector<RefusedRow>& rows, const Phrasebook& book, QWidget* parent) {
  auto* table = plainTable(
      {ImportReport::tr("Row"), ImportReport::tr("Column"), ImportReport::tr("Why it was refused")},
      ImportReport::tr("Rows that were refused"), parent);
  table->setObjectName(QStringLiteral("refused"));
  for (const RefusedRow& row : rows)
    addRow(*table,
           {QString::number(row.row), fromCore(row.refusal.path), fromCore(sentence(row.refusal, book))});
  table->horizontalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
  table->horizontalHeader()->setSectionResizeMode(2, QHeaderView::Stretch);
  table->verticalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
  return table;
}

}  // namespace

ImportReport::ImportReport(const ReferenceImport& import, const Phrasebook& book, QWidget* parent)
    : QDialog(parent) {
  const int good = static_cast<int>(import.list.entries.size());
  const int refused = static_cast<int>(import.refused.size());
  setWindowTitle(tr("What the table holds"));
  setObjectName(QStringLiteral("import-report"));
  auto* column = new QVBoxLayout(this);
  auto* label = new QLabel(tr("%n entries can be read.", "", good) + QLatin1Char('\n') +
                               (refused == 0 ? tr("No row was refused.")
                                             : tr("%n &rows were refused and are left out:", "", refused)),
                           this);
  label->setObjectName(QStringLiteral("summary"));
  column->addWidget(label);
  if (refused > 0) {
    auto* table = refusedRows(import.refused, book, this);
    label->setBuddy(table);
    column->addWidget(table, 1);
  }
  auto* line = new QHBoxLayout;
  auto* keep = plainButton(tr("&Keep the good entries and save the list …"), "keep", this);
  auto* leave = plainButton(tr("Keep &nothing"), "leave", this);
  keep->setEnabled(good > 0);
  line->addStretch(1);
  line->addWidget(keep);
  line->addWidget(leave);
  column->addLayout(line);
  connect(keep, &QPushButton::clicked, this, &QDialog::accept);
  connect(leave, &QPushButton::clicked, this, &QDialog::reject);
  if (refused > 0) resize(reportSize);
  leave->setFocus();
}

}  // namespace wardchalk::ui
