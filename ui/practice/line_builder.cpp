#include "ui/practice/line_builder.h"

#include <QApplication>
#include <QHBoxLayout>
#include <QLabel>
#include <QListWidget>
#include <QPushButton>
#include <QScrollArea>
#include <QShortcut>
#include <QVBoxLayout>

#include "core/practice/sessions/lesson_words.h"
#include "core/words/phrasebook.h"
#include "core/words/spoken.h"
#include "core/words/step_words.h"
#include "ui/practice/chain_canvas.h"
#include "ui/practice/line_words.h"
#include "ui/practice/practice_look.h"
#include "ui/theme/focus_ring.h"
#include "ui/theme/text.h"

namespace wardchalk::ui {

namespace {

constexpr QSize builderSize(900, 600);

}  // namespace

LineBuilder::LineBuilder(const Ask& ask, const Problem& problem, double zoom, QWidget* parent,
                         const std::vector<CarriedAnswer>& earlier)
    : QDialog(parent),
      zoom_(zoom),
      facts_(lineFacts(ask, problem, earlier)),
      work_{{}, lineWanted(ask, problem)} {
  setObjectName(QStringLiteral("line-builder"));
  setWindowTitle(tr("Build the line – PRACTICE"));
  setPalette(practiceWidgets(QApplication::palette()));
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(0, 0, 0, 12);
  column->addWidget(new PracticeBand(fromCore(say(PhraseId::practiceSheet_banner)), this));
  auto* inner = new QVBoxLayout;
  inner->setContentsMargins(20, 8, 20, 0);
  inner->setSpacing(10);
  column->addLayout(inner, 1);
  inner->addWidget(wordsIn(this, questionWithUnit(ask, problem), 1.2, true));
  canvas_ = new ChainCanvas(this);
  canvas_->setScale(zoom);
  auto* sides = new QHBoxLayout;
  sides->setSpacing(20);
  sides->addWidget(buildFacts(problem), 2);
  setTabOrder(list_, canvas_);  // as they lie beside one another
  auto* right = new QVBoxLayout;
  right->setSpacing(8);
  auto* scroll = new QScrollArea(this);
  scroll->setFrameShape(QFrame::NoFrame);
  scroll->setWidgetResizable(true);
  scroll->setFocusPolicy(Qt::NoFocus);
  auto* holder = new QWidget(scroll);
  auto* held = new QVBoxLayout(holder);
  held->setContentsMargins(0, 0, 0, 0);
  held->addWidget(canvas_);
  held->addStretch(1);
  scroll->setWidget(holder);
  right->addWidget(scroll, 1);
  left_ = wordsIn(this, {}, 1.05, true);
  left_->setObjectName(QStringLiteral("left-over"));
  right->addWidget(left_);
  right->addWidget(buildHandles());
  sides->addLayout(right, 3);
  inner->addLayout(sides, 1);
  auto* foot = new QHBoxLayout;
  foot->addStretch(1);
  write_ = plainButton(tr("&Write it into the line"), "write", this, practiceTarget);
  auto* cancel = plainButton(tr("&Cancel"), "leave", this, practiceTarget);
  foot->addWidget(cancel);
  foot->addWidget(write_);
  inner->addLayout(foot);
  connect(write_, &QPushButton::clicked, this, &QDialog::accept);
  connect(cancel, &QPushButton::clicked, this, &QDialog::reject);
  connect(canvas_, &ChainCanvas::turnWanted, this, &LineBuilder::turn);
  bindKeys();
  new FocusRing(this);
  applyLetters(this, zoom);
  resize((QSizeF(builderSize) * qMin(zoom, 1.35)).toSize());
  change(work_, -1);
  list_->setCurrentRow(0);
  list_->setFocus(Qt::OtherFocusReason);
}

QWidget* LineBuilder::buildFacts(const Problem& problem) {
  auto* side = new QWidget(this);
  auto* column = new QVBoxLayout(side);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(4);
  auto* label = wordsIn(side, tr("&Facts you can use"), 1, true);
  column->addWidget(label);
  list_ = new QListWidget(side);
  list_->setObjectName(QStringLiteral("facts"));
  list_->setAccessibleName(tr("Facts. Enter adds one to the chain."));
  list_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  list_->setWordWrap(true);
  list_->setSpacing(3);
  label->setBuddy(list_);
  for (const ChainFact& fact : facts_) {
    const Origin& origin = fact.factor.over.origin;
    const QString from = fromCore(tag(origin, problem.key));
    auto* item = new QListWidgetItem(held(factorLine(fact.factor)) +
                                     (from.isEmpty() ? QString() : QStringLiteral("   ") + from));
    item->setData(Qt::AccessibleTextRole, fromCore(spokenFactor(fact.factor)) + QStringLiteral(", ") + from);
    list_->addItem(item);
  }
  column->addWidget(list_, 1);
  column->addWidget(quietWordsIn(side, tr("Enter or a double click adds a fact.")));
  connect(list_, &QListWidget::itemActivated, this, &LineBuilder::addChosenFact);
  auto* add = plainButton(tr("&Add it to the chain"), "add", side, practiceTarget);
  column->addWidget(add);
  connect(add, &QPushButton::clicked, this, &LineBuilder::addChosenFact);
  return side;
}

QWidget* LineBuilder::buildHandles() {
  auto* handles = new QWidget(this);
  auto* flow = new FlowLayout(handles);
  const auto handle = [&](const QString& text, const char* name, auto what) {
    QPushButton* button = addButton(flow, text, name);
    handles_.push_back(button);
    connect(button, &QPushButton::clicked, this, what);
  };
  handle(tr("&Turn over (T)"), "turn", [this] { turn(); });
  handle(tr("&Square root of everything (R)"), "root", [this] { root(); });
  handle(tr("&Remove (Del)"), "remove", [this] { remove(); });
  flow->tieNext();
  handle(tr("Move l&eft (Shift+←)"), "left", [this] { move(-1); });
  handle(tr("Move r&ight (Shift+→)"), "right", [this] { move(+1); });
  return handles;
}

/// The keys that the buttons name, wherever the keyboard is: before the list looks for a fact that begins
/// with a T.
void LineBuilder::bindKeys() {
  const auto bind = [this](const QKeySequence& keys, auto what) {
    connect(new QShortcut(keys, this), &QShortcut::activated, this, what);
  };
  bind(Qt::Key_T, [this] { turn(); });
  bind(Qt::Key_R, [this] { root(); });
  bind(Qt::Key_Delete, [this] { remove(); });
  bind(Qt::Key_Backspace, [this] { remove(); });
  bind(Qt::SHIFT | Qt::Key_Left, [this] { move(-1); });
  bind(Qt::SHIFT | Qt::Key_Right, [this] { move(+1); });
}

void LineBuilder::addChosenFact() {
  const int row = list_->currentRow();
  if (row < 0) return;
  const std::size_t end = work_.chain.factors.size();
  change(withFact(work_, facts_[static_cast<std::size_t>(row)], end), static_cast<int>(end));
}

void LineBuilder::change(ChainWork work, int chosen) {
  work_ = std::move(work);
  canvas_->show(work_, chosen);
  const bool empty = work_.chain.factors.empty();
  const ChainState state = stateOf(work_);
  const QString told = leftOverOf(work_);
  left_->setText(empty            ? tr("Units strike out as they meet.")
                 : state.isWanted ? QStringLiteral("✓ ") + told
                                  : told);
  for (QPushButton* handle : handles_) handle->setEnabled(!empty);
  write_->setEnabled(!empty);
}

void LineBuilder::turn() {
  const int chosen = canvas_->chosen();
  if (chosen >= 0) change(withTurned(work_, static_cast<std::size_t>(chosen)), chosen);
}

void LineBuilder::move(int direction) {
  const int chosen = canvas_->chosen();
  const int to = chosen + direction;
  if (chosen < 0 || to < 0 || to >= static_cast<int>(work_.chain.factors.size())) return;
  change(withMoved(work_, static_cast<std::size_t>(chosen), static_cast<std::size_t>(to)), to);
}

void LineBuilder::remove() {
  const int chosen = canvas_->chosen();
  if (chosen >= 0) change(without(work_, static_cast<std::size_t>(chosen)), qMax(0, chosen - 1));
}

void LineBuilder::root() {
  if (!work_.chain.factors.empty()) change(withRoot(work_, !work_.chain.rooted), canvas_->chosen());
}

QString LineBuilder::line() const { return fromCore(lineText(work_.chain)) + QStringLiteral(" = "); }

}  // namespace wardchalk::ui
