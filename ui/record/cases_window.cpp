#include "ui/record/cases_window.h"

#include <QEvent>
#include <QHeaderView>
#include <QProgressBar>
#include <QPushButton>
#include <QTableView>
#include <QTimer>
#include <QVBoxLayout>
#include <array>
#include <utility>

#include "core/record/text_file.h"
#include "ui/access/announcer.h"
#include "ui/record/plain_table.h"
#include "ui/theme/buttons.h"
#include "ui/theme/native_path.h"
#include "ui/theme/plain_label.h"
#include "ui/theme/target.h"

namespace wardchalk::ui {

namespace {

constexpr QSize usualSize(1180, 640);
/// Of the columns but the last: file and row, title, verdict, why.
constexpr std::array columnParts = {0.15, 0.15, 0.2, 0.35};

}  // namespace

CasesWindow::CasesWindow(const HouseRules& rules, QWidget* parent)
    : QDialog(parent), rules_(rules), model_(new CasesModel(this)), work_(new LongWork(this)) {
  setWindowTitle(tr("Several cases"));
  setObjectName(QStringLiteral("several-cases-window"));
  auto* column = new QVBoxLayout(this);
  column->addWidget(buildTop());
  column->addWidget(buildList(), 1);
  column->addWidget(buildBottom());
  connectWork();
  resize(usualSize);
  setBusy(false);
  showCounts();
}

/// Before the rows that it may be reading.
CasesWindow::~CasesWindow() { delete work_; }

QWidget* CasesWindow::buildTop() {
  auto* row = new QWidget(this);
  auto* line = new QHBoxLayout(row);
  line->setContentsMargins(0, 0, 0, 0);
  const auto add = [&](const QString& text, const char* name) {
    idleButtons_ << plainButton(text, name, row);
    line->addWidget(idleButtons_.last());
    return idleButtons_.last();
  };
  connect(add(tr("&Open cases or a table …"), "open-cases"), &QPushButton::clicked, this,
          &CasesWindow::filesWanted);
  connect(add(tr("Read and &work all again"), "work-again"), &QPushButton::clicked, this,
          [this] { read(files_); });
  line->addStretch(1);
  connect(add(tr("Save the &results as a table …"), "save-table"), &QPushButton::clicked, this,
          &CasesWindow::tableWanted);
  connect(add(tr("All &sheets in one PDF …"), "save-sheets"), &QPushButton::clicked, this,
          &CasesWindow::sheetsWanted);
  return row;
}

QWidget* CasesWindow::buildList() {
  auto* part = new QWidget(this);
  auto* column = new QVBoxLayout(part);
  column->setContentsMargins(0, 0, 0, 0);
  counts_ = new PlainLabel(part);
  counts_->setObjectName(QStringLiteral("counts"));
  counts_->setWordWrap(true);
  auto* label = new PlainLabel(tr("&Cases: Enter opens one in the form"), part);
  view_ = new QTableView(part);
  view_->setObjectName(QStringLiteral("cases"));
  view_->setAccessibleName(tr("Cases"));
  view_->setModel(model_);
  view_->setItemDelegateForColumn(CasesModel::verdict, new VerdictDelegate(view_));
  readByRows(*view_);
  view_->setTextElideMode(Qt::ElideMiddle);  // the row's number and a sentence's end stay in view
  view_->verticalHeader()->setSectionResizeMode(QHeaderView::Fixed);
  view_->horizontalHeader()->setMinimumHeight(leastTarget);
  view_->horizontalHeader()->setHighlightSections(false);
  view_->horizontalHeader()->setStretchLastSection(true);
  label->setBuddy(view_);
  detail_ = new PlainLabel(part);
  detail_->setObjectName(QStringLiteral("detail"));
  detail_->setWordWrap(true);
  detail_->setAlignment(Qt::AlignLeft | Qt::AlignTop);
  fitToLetters();
  column->addWidget(counts_);
  column->addWidget(label);
  column->addWidget(view_, 1);
  column->addWidget(detail_);
  connect(view_, &QTableView::activated, this, &CasesWindow::openCurrent);
  connect(view_->selectionModel(), &QItemSelectionModel::currentRowChanged, this, &CasesWindow::showCurrent);
  return part;
}

/// A row holds two lines.
void CasesWindow::fitToLetters() {
  const int two = 2 * fontMetrics().lineSpacing();
  view_->verticalHeader()->setDefaultSectionSize(std::max(leastTarget, two + 6));
  detail_->setMinimumHeight(two);
}

void CasesWindow::changeEvent(QEvent* event) {
  QDialog::changeEvent(event);
  if (event->type() == QEvent::FontChange && detail_) fitToLetters();
}

void CasesWindow::resizeEvent(QResizeEvent* event) {
  QDialog::resizeEvent(event);
  QTimer::singleShot(0, this, [this] { shareWidth(*view_, columnParts); });  // once the table has its size
}

QWidget* CasesWindow::buildBottom() {
  auto* row = new QWidget(this);
  auto* line = new QHBoxLayout(row);
  line->setContentsMargins(0, 0, 0, 0);
  progress_ = new QProgressBar(row);
  progress_->setRange(0, 1000);
  progress_->setAccessibleName(tr("How much is done"));
  cancel_ = plainButton(tr("Sto&p"), "stop", row);
  line->addWidget(progress_, 1);
  line->addWidget(cancel_);
  line->addStretch(1);
  const auto add = [&](const QString& text, const char* name) {
    auto* button = plainButton(text, name, row);
    line->addWidget(button);
    return button;
  };
  auto* previous = add(tr("Pre&vious"), "previous");
  auto* open = add(tr("Open in the &form"), "open-row");
  auto* next = add(tr("&Next"), "next");
  auto* close = add(tr("C&lose"), "close-cases");
  connect(cancel_, &QPushButton::clicked, this, [this] {
    cancelled_ = true;
    work_->cancel();
  });
  connect(previous, &QPushButton::clicked, this, [this] { step(-1); });
  connect(open, &QPushButton::clicked, this, &CasesWindow::openCurrent);
  connect(next, &QPushButton::clicked, this, [this] { step(1); });
  connect(close, &QPushButton::clicked, this, &QDialog::close);
  return row;
}

void CasesWindow::connectWork() {
  connect(work_, &LongWork::started, this, [this] { setBusy(true); });
  connect(work_, &LongWork::progressed, progress_, &QProgressBar::setValue);
  connect(work_, &LongWork::finished, this, [this] {
    setBusy(false);
    showCounts();
    if (currentRow() < 0 && model_->rowCount() > 0) view_->selectRow(0);
  });
}

void CasesWindow::setBusy(bool busy) {
  progress_->setValue(0);
  progress_->setVisible(busy);
  cancel_->setVisible(busy);
  for (QPushButton* button : std::as_const(idleButtons_)) button->setEnabled(!busy);
  for (const char* name : {"work-again", "save-table", "save-sheets"})
    if (!busy) findChild<QPushButton*>(QLatin1String(name))->setEnabled(model_->rowCount() > 0);
}

void CasesWindow::read(const QStringList& files) {
  if (isBusy()) return;
  files_ = files;
  model_->clear();
  showCurrent();
  work_->start([this, files, rules = rules_](LongWork::Handle& work) {
    readCases(files, rules, work, [this](std::vector<CaseRow> rows) {
      model_->add(std::move(rows));
      showCounts();
    });
  });
}

Result<Done> CasesWindow::checkTarget(const QString& file) const {
  for (const QString& read : files_)
    if (auto apart = checkNotInput(nativePath(file), nativePath(read)); !apart) return apart;
  return checkWritable(nativePath(file));
}

void CasesWindow::writeTable(const QString& file) {
  if (isBusy()) return;
  if (const auto writable = checkTarget(file); !writable) {
    Q_EMIT failed(writable.refusal());
    return;
  }
  work_->start([this, file, rules = rules_](LongWork::Handle& work) {
    // The rows stay as they are while anything is running.
    const auto written = writeCaseRows(file, model_->rows(), rules, work);
    if (!written) work.post([this, refusal = written.refusal()] { Q_EMIT failed(refusal); });
  });
}

void CasesWindow::showCounts() {
  const auto& counts = model_->counts();
  if (model_->rowCount() == 0)
    return counts_->setText(tr(
        "Case files (JSON), a case a line (JSON Lines), or a table (CSV) with a header such as child.weight. "
        "A title is shown as it is written: enter no names in it."));
  const std::array names = {tr("safe"),        tr("ask"),        tr("unsafe"),
                            tr("not covered"), tr("no verdict"), tr("cannot be read")};
  QStringList parts;
  for (std::size_t i = 0; i < counts.size(); ++i)
    if (counts[i] > 0) parts << QStringLiteral("%1 %2").arg(counts[i]).arg(names[i]);
  counts_->setText(tr("%n cases: ", "", model_->rowCount()) + parts.join(QStringLiteral(", ")));
}

int CasesWindow::currentRow() const { return view_->currentIndex().row(); }

void CasesWindow::showCurrent() {
  const QModelIndex at = view_->currentIndex();
  if (!at.isValid()) return detail_->clear();
  QStringList lines;
  for (const int column : {CasesModel::reason, CasesModel::needs}) {
    const QString text = at.siblingAtColumn(column).data().toString();
    if (!text.isEmpty()) lines << text;
  }
  const QString notMade = at.data(CasesModel::notMadeRole).toString();
  if (!notMade.isEmpty()) lines << notMade;
  detail_->setText(lines.join(QLatin1Char('\n')));
}

void CasesWindow::openCurrent() {
  const int row = currentRow();
  if (row >= 0) Q_EMIT openWanted(row);
}

void CasesWindow::step(int by) {
  const int row = currentRow() + by;
  if (row >= 0 && row < model_->rowCount()) Q_EMIT openWanted(row);
}

void CasesWindow::select(int row) { view_->selectRow(row); }

void CasesWindow::say(const QString& text) {
  counts_->setText(text);
  announce(*counts_, text);
}

void CasesWindow::beginPrinting() {
  printing_ = true;
  cancelled_ = false;
  setBusy(true);
}

bool CasesWindow::showPrinting(int done, int all) {
  progress_->setValue(all > 0 ? static_cast<int>(qint64{1000} * done / all) : 0);
  return !cancelled_;
}

void CasesWindow::endPrinting() {
  printing_ = false;
  setBusy(false);
}

}  // namespace wardchalk::ui
