#include "ui/shell/practice_desk.h"

#include <QRandomGenerator>

#include "core/practice/sessions/set_file.h"
#include "core/record/text_file.h"
#include "core/words/sentences.h"
#include "ui/practice/practice_sheet.h"
#include "ui/practice/practice_window.h"
#include "ui/shell/case_document.h"
#include "ui/theme/text.h"

namespace wardchalk::ui {

namespace {

/// Short enough to be read out to a class.
constexpr int mostSeed = 100000;

QString refusalText(const QString& file, const Refusal& refusal) {
  const QString place =
      refusal.path.empty() ? QString() : fromCore(placeText(refusal)) + QStringLiteral(": ");
  return outside(file) + QStringLiteral(": ") + place + QString::fromStdString(sentence(refusal));
}

}  // namespace

PracticeDesk::PracticeDesk(QObject* parent, Settings& settings, Questions& questions)
    : QObject(parent), settings_(settings), questions_(questions) {}

PracticeDesk::~PracticeDesk() { delete window_; }

PracticeWindow* PracticeDesk::window() const { return window_; }

void PracticeDesk::open() {
  if (!window_) {
    const auto seed = static_cast<std::uint64_t>(QRandomGenerator::global()->bounded(1, mostSeed));
    window_ = new PracticeWindow(questions_, settings_.paper(), seed, settings_.textSize());
    connect(window_, &PracticeWindow::paperChosen, this, [this](PaperSize size) {
      settings_.setPaper(size);
      Q_EMIT paperChosen();
    });
    connect(window_, &PracticeWindow::textSizeChosen, this, &PracticeDesk::textSizeChosen);
    window_->setAttribute(Qt::WA_DeleteOnClose);
  }
  window_->show();
  window_->raise();
  window_->activateWindow();
}

void PracticeDesk::followTextSize(int percent) {
  if (window_) window_->setZoom(percent);
}

void PracticeDesk::followPaper(PaperSize size) {
  if (window_) window_->setPaper(size);
}

QString writePracticeSheet(const QString& setFile, const QString& pdf, bool withKey, PaperSize paper) {
  if (const auto apart = checkNotInput(nativePath(pdf), nativePath(setFile)); !apart)
    return refusalText(pdf, apart.refusal());
  const Result<std::string> text = readTextFile(nativePath(setFile));
  if (!text) return refusalText(setFile, text.refusal());
  const Result<PracticeSet> set = readSet(*text);
  if (!set) return refusalText(setFile, set.refusal());
  const auto kind = withKey ? PracticeSheetKind::key : PracticeSheetKind::questions;
  const auto written = writePracticePdf(pdf, *set, kind, paper);
  return written ? QString() : refusalText(pdf, written.refusal());
}

}  // namespace wardchalk::ui
