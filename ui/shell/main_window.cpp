#include "ui/shell/main_window.h"

#include <QAction>
#include <QApplication>
#include <QCloseEvent>
#include <QDragEnterEvent>
#include <QMenuBar>
#include <QMimeData>
#include <QStackedWidget>
#include <QVBoxLayout>
#include <algorithm>

#include "core/check/work_out.h"
#include "core/medicine/paths.h"
#include "core/words/phrasebook.h"
#include "core/words/rules_words.h"
#include "core/words/sentences.h"
#include "ui/access/announcer.h"
#include "ui/access/answers.h"
#include "ui/access/steady_tips.h"
#include "ui/board/board.h"
#include "ui/form/field_table.h"
#include "ui/form/form.h"
#include "ui/shell/actions.h"
#include "ui/shell/cases_desk.h"
#include "ui/shell/caution_bar.h"
#include "ui/shell/copy_desk.h"
#include "ui/shell/help_texts.h"
#include "ui/shell/idle_desk.h"
#include "ui/shell/offered_actions.h"
#include "ui/shell/practice_desk.h"
#include "ui/shell/reference_desk.h"
#include "ui/shell/rules_desk.h"
#include "ui/shell/save_check.h"
#include "ui/shell/second_check_desk.h"
#include "ui/shell/second_check_words.h"
#include "ui/shell/settings_desk.h"
#include "ui/shell/sheet_desk.h"
#include "ui/shell/sides.h"
#include "ui/shell/window_place.h"
#include "ui/theme/colours.h"
#include "ui/theme/letters.h"
#include "ui/theme/surface.h"
#include "ui/theme/text.h"
#include "ui/working/amount_widget.h"
#include "ui/working/flag_widget.h"
#include "ui/working/working_pane.h"

namespace wardchalk::ui {

namespace {

constexpr QSize usualSize(1366, 768);

/// The one case file that is being dragged, or nothing.
QString draggedFile(const QMimeData* data) {
  const QList<QUrl> urls = data->urls();
  return urls.size() == 1 ? urls.first().toLocalFile() : QString();
}

/// The field that withholds every comparison: one that is being changed, or else one that cannot be read.
std::optional<Withheld> withheldBy(const CaseDraft& draft) {
  if (const auto changing = draft.changingPath()) return Withheld(*changing);
  if (const auto refused = firstRefused(draft)) return Withheld(*refused, true);
  return std::nullopt;
}

QString caseFilter() { return MainWindow::tr("Case files (*.wardchalk *.json)"); }

}  // namespace

MainWindow::MainWindow(HouseRules rules, Settings& settings, Dialogs& dialogs, QWidget* parent)
    : QMainWindow(parent),
      rules_(std::move(rules)),
      settings_(settings),
      dialogs_(dialogs),
      document_(editor_),
      clipboard_(this),
      actions_(new Actions(menuBar(), this)),
      desk_(new SheetDesk(this, settings_, dialogs_)),
      references_(new ReferenceDesk(this, editor_, rules_, settings_, dialogs_)),
      cases_(new CasesDesk(*this, rules_, settings_, dialogs_)),
      practice_(new PracticeDesk(this, settings_, dialogs_)) {
  answerReaders();
  SteadyTips::install();
  setAcceptDrops(true);
  useColours(settings_.colours());
  setPalette(surfacePalette(QApplication::palette()));
  buildCentre();
  bindFileActions();
  bindSheetActions();
  bindWardActions();
  bindEditActions();
  bindViewActions();
  bindHelpActions();
  bindCheckActions();
  bindSettings();
  connectSides();
  resize(usualSize);
  restorePlace(*this, settings_.geometry());
  sides_->setFormWidth(settings_.formWidth());
  setUnitSystem(UnitSystem::none);
  useTextSize(settings_.textSize());
  rulesDesk_->start();
  followDesks();
  form_->focusLast();
}

/// Before the rest: what still tells something on its way out (the undo stack that it is clean now, cards
/// that they go) would reach for a document, actions and a worksheet that are gone already.
MainWindow::~MainWindow() {
  editor_.undoStack().disconnect();
  editor_.disconnect();
  delete copies_;
}

void MainWindow::buildCentre() {
  auto* centre = new QWidget(this);
  auto* column = new QVBoxLayout(centre);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(0);
  auto* notices = new QVBoxLayout;
  auto* pages = new QStackedWidget(centre);
  giveRole(pages, QAccessible::Client);  // or a reader says "layered pane" with every way back to the window
  pages->addWidget(buildSides());
  column->addLayout(notices);
  column->addWidget(pages, 1);
  caution_ = new CautionBar(centre);
  caution_->setRules(fromCore(rulesTitle(rules_)));
  column->addWidget(caution_);
  setCentralWidget(centre);
  setAnimated(false);  // there are no docks to slide, and each layout would start an animation of the centre
  buildDesks(pages, notices);
}

QWidget* MainWindow::buildSides() {
  form_ = new Form(editor_, rules_);
  pane_ = new WorkingPane;
  pane_->setObjectName(QStringLiteral("working"));
  sides_ = new Sides(form_, pane_);
  return sides_;
}

void MainWindow::bindFileActions() {
  actions_->bind(ActionId::newChild, [this] { newChild(); });
  actions_->bind(ActionId::open, [this] { openChosen(); });
  actions_->bind(ActionId::save, [this] { save(); });
  actions_->bind(ActionId::saveAs, [this] { saveAs(); });
  actions_->bind(ActionId::quit, [this] { close(); });
}

void MainWindow::bindSheetActions() {
  actions_->bind(ActionId::sheetPrint, [this] { makeSheet(&SheetDesk::print); });
  actions_->bind(ActionId::sheetPreview, [this] { makeSheet(&SheetDesk::preview); });
  actions_->bind(ActionId::sheetPdf, [this] { makeSheet(&SheetDesk::savePdf); });
}

void MainWindow::bindWardActions() {
  actions_->bind(ActionId::chooseReference, [this] { references_->choose(); });
  actions_->bind(ActionId::emptyReference, [this] { editor_.emptyReference(); });
  connect(form_, &Form::listWanted, references_, &ReferenceDesk::choose);
  cases_->bind(*actions_);
}

void MainWindow::bindEditActions() {
  QUndoStack& stack = editor_.undoStack();
  QAction* undo = (*actions_)[ActionId::undo];
  QAction* redo = (*actions_)[ActionId::redo];
  undo->setEnabled(false);
  redo->setEnabled(false);
  connect(&stack, &QUndoStack::canUndoChanged, undo, &QAction::setEnabled);
  connect(&stack, &QUndoStack::canRedoChanged, redo, &QAction::setEnabled);
  actions_->bind(ActionId::undo, [this] { editor_.undoStack().undo(); });
  actions_->bind(ActionId::redo, [this] { editor_.undoStack().redo(); });
  copies_ = new CopyDesk(*pane_, *actions_, shown_, this);
}

void MainWindow::bindViewActions() {
  actions_->bind(ActionId::board, [this] { showBoard(); });
  actions_->bind(ActionId::practice, [this] { practice_->open(); });
  connect(practice_, &PracticeDesk::textSizeChosen, this, &MainWindow::useTextSize);
  (*actions_)[ActionId::board]->setEnabled(false);  // until there is something to show
  actions_->bind(ActionId::zoomIn, [this] { useTextSize(settings_.textSize() + textStep); });
  actions_->bind(ActionId::zoomOut, [this] { useTextSize(settings_.textSize() - textStep); });
  actions_->bind(ActionId::zoomReset, [this] { useTextSize(100); });
  actions_->bind(ActionId::sayAgain, [this] { sayAgain(); });
  actions_->bind(ActionId::otherSide, [this] { goToOtherSide(); });
  actions_->bind(ActionId::goToFlag, [this] { goToWorking(); });
  actions_->bind(ActionId::goToForm, [this] {
    if (!form_->focusRefused()) form_->focusLast();
  });
  actions_->bind(ActionId::formWider, [this] { sides_->widenForm(); });
  actions_->bind(ActionId::formNarrower, [this] { sides_->narrowForm(); });
  actions_->bind(ActionId::moreFields,
                 [this] { form_->setUnfolded((*actions_)[ActionId::moreFields]->isChecked()); });
  actions_->bind(ActionId::unitsMetric, [this] { setUnitSystem(UnitSystem::metric); });
  actions_->bind(ActionId::unitsHousehold, [this] { setUnitSystem(UnitSystem::household); });
  actions_->bind(ActionId::unitsNone, [this] { setUnitSystem(UnitSystem::none); });
}

void MainWindow::bindHelpActions() {
  actions_->bind(ActionId::shortHelp,
                 [this] { dialogs_.tell(this, tr("How to use this"), shortHelpText()); });
  actions_->bind(ActionId::example, [this] { showExample(); });
  actions_->bind(ActionId::about, [this] { dialogs_.tell(this, tr("About Wardchalk"), aboutText()); });
}

void MainWindow::connectSides() {
  connect(&editor_, &CaseEditor::wasRead, this,
          [this](const QString& path, const QString& typed) { voice_.typed(path, typed); });
  connect(&editor_, &CaseEditor::changed, this, &MainWindow::workAgain);
  connect(&editor_.undoStack(), &QUndoStack::cleanChanged, this, &MainWindow::nameWindow);
  connect(form_, &Form::pointedAt, pane_, &WorkingPane::light);
  connect(pane_, &WorkingPane::lit, form_, &Form::light);
  connect(pane_, &WorkingPane::originActivated, this, &MainWindow::goToOrigin);
  connect(pane_, &WorkingPane::exampleRequested, this, &MainWindow::showExample);
  connect(pane_->amount(), &AmountWidget::answered, this,
          [this](FindingCode question, std::optional<Answer> how) {
            session_.answer(question, how);
            showWhatMayBeSeen();
          });
  // A session that ends does not always ask its windows to close.
  connect(qApp, &QCoreApplication::aboutToQuit, this, [this] { clipboard_.empty(); });
}

void MainWindow::workAgain() {
  const CaseDraft& draft = editor_.draft();
  sheet_ = workOut(draft.toCase(), rules_, withheldBy(draft));
  const auto apart = session_.disagreement();
  if (apart && !draft.isEmpty()) sheet_ = unsettled(std::move(sheet_), *apart);
  (*actions_)[ActionId::board]->setEnabled(!draft.isEmpty());
  if (draft.isEmpty())
    form_->followNothing();
  else
    form_->follow(sheet_);
  session_.worked(sheet_);
  showWhatMayBeSeen();
  if (draft.isEmpty()) pane_->showEmpty();  // and nothing of what stood there is left in it, shown or not
  followCase();
}

/// Also a box that shows what the session did not keep goes back to what it did.
void MainWindow::showWhatMayBeSeen() {
  shown_ = Shown(sheet_, session_.answers());
  pane_->show(shown_);
  voice_.follow(editor_.draft(), shown_);
}

void MainWindow::nameWindow() {
  if (session_.isCovered()) {
    setWindowModified(false);
    return setWindowTitle(tr("Wardchalk"));
  }
  const QString file = document_.name().isEmpty() ? tr("new child") : document_.name();
  const QString name = session_.isUnderWay() ? tr("second check") : file;
  QString shown = outside(name);
  shown.replace(QStringLiteral("[*]"),
                QStringLiteral("[*][*]"));  // of the file's name, not the sign of changes
  setWindowTitle(tr("%1[*] – Wardchalk", "name of the case file").arg(shown));
  setWindowModified(editor_.isModified());
}

/// Whether the entries may go: nothing was entered, or they are saved, or the user lets them go.
bool MainWindow::mayLeave(const QString& question) {
  if (!session_.holdsUnsaved(editor_.shown())) return true;
  switch (dialogs_.unsaved(this, question)) {
    case Unsaved::save:
      idle_->uncover();
      second_->leave();  // a case is what the first person entered
      return save();
    case Unsaved::discard:
      return true;
    case Unsaved::keep:
      return false;
  }
  return false;
}

/// The same where nothing comes back: an unsettled difference, which no file keeps, is told as well. Another
/// case that is opened in its place sets the difference aside and no more.
bool MainWindow::mayForget(const QString& question) {
  if (!session_.isUnsettled()) return mayLeave(question);
  const QString lost = fromCore(say(PhraseId::second_unsettled));
  if (session_.holdsUnsaved(editor_.shown())) return mayLeave(lost + QStringLiteral("\n\n") + question);
  return dialogs_.goesOn(
      this, {tr("The second check is not settled"), lost, tr("&Keep this case"), tr("&Leave it unsettled")});
}

void MainWindow::newChild() {
  if (!mayForget(tr("The entries are not saved. Begin with a new child? It cannot be undone."))) return;
  clipboard_.empty();
  session_.forget();
  idle_->reset();
  second_->reset();
  document_.clear();
  setUnitSystem(UnitSystem::none);
  followDesks();
  if (!form_->isUnfolded()) form_->setUnfolded(false);  // who works with every field in view keeps them
  form_->focusTop();
}

void MainWindow::openChosen() {
  const QString file = dialogs_.file(this, {FileQuestion::open, tr("Open a case"), caseFilter(), {}});
  if (!file.isEmpty()) openFile(file);
}

bool MainWindow::openFile(const QString& file) {
  if (session_.isCovered() || session_.isUnderWay()) return false;
  if (!mayLeave(tr("The entries are not saved. Open another case in their place?"))) return false;
  const CaseDraft before = editor_.draft();
  if (const auto opened = document_.open(file); !opened) {
    tellRefusal(tr("The case was not opened"), file, opened.refusal());
    return false;
  }
  session_.opened(before, editor_.draft());
  second_->reset();
  followDesks();
  return true;
}

bool MainWindow::openRow(const std::vector<WrittenEntry>& entries) {
  if (session_.isUnderWay())
    dialogs_.tell(this, tr("The row was not opened"), fromCore(say(PhraseId::second_underWay)));
  if (session_.isCovered() || session_.isUnderWay()) return false;
  if (!mayLeave(tr("The entries are not saved. Open another case in their place?"))) return false;
  const CaseDraft before = editor_.draft();
  document_.openEntries(entries);
  session_.opened(before, editor_.draft());
  second_->reset();
  followDesks();
  return true;
}

bool MainWindow::save() {
  return document_.file().isEmpty() ? saveAs() : saveTo(document_.file(), document_.known());
}

/// Whatever stands under another name is asked about, so nothing is believed to stand there.
bool MainWindow::saveAs() {
  const QString suggested = document_.file().isEmpty() ? tr("case.wardchalk") : document_.file();
  const QString file =
      dialogs_.file(this, {FileQuestion::saveAskedLater, tr("Save the case"), caseFilter(), suggested});
  if (file.isEmpty()) return false;
  return saveTo(file, isSameFile(file, document_.file()) ? document_.known() : KnownFile::nothing());
}

bool MainWindow::saveTo(const QString& file, KnownFile believed) {
  for (Result<Done> saved = document_.save(file, believed); !saved; saved = document_.save(file, believed)) {
    const Refusal& refusal = saved.refusal();
    if (refusal.code != RefusalCode::targetChanged) {
      tellRefusal(tr("The case was not saved"), file, refusal);
      form_->focusField(QString::fromStdString(refusal.path));
      return false;
    }
    SaveAnswer answer = askBeforeSaving(this, document_, file, editor_.draft(), rules_.pounds, dialogs_);
    if (answer.what == Overwrite::saveElsewhere) return saveAs();
    if (answer.what == Overwrite::openTheirs) {
      editor_.markSaved();  // that what is here is lost was said
      openFile(file);
    }
    if (answer.what != Overwrite::keepMine) return false;
    believed = std::move(answer.seen);  // it may have changed again while the question stood
  }
  nameWindow();
  return true;
}

void MainWindow::tellRefusal(const QString& title, const QString& file, const Refusal& refusal) {
  QString text = outside(file);
  if (!refusal.path.empty()) text += QLatin1Char('\n') + fromCore(placeText(refusal));
  dialogs_.tell(this, title, text + QLatin1Char('\n') + QString::fromStdString(sentence(refusal)));
}

void MainWindow::showExample() {
  if (session_.isCovered() || session_.isUnderWay()) return;
  if (!mayLeave(tr("The entries are not saved. Show the worked example in their place?"))) return;
  const CaseDraft before = editor_.draft();
  document_.openExample();
  session_.opened(before, editor_.draft());
  second_->reset();
  followDesks();
}

/// A number that is still being typed counts as typed to its end, as when a case is saved.
void MainWindow::makeSheet(void (SheetDesk::*make)(const Shown&, const SheetMade&)) {
  editor_.finishAll();
  if (editor_.draft().isEmpty())
    return dialogs_.tell(this, tr("There is no sheet yet"),
                         tr("Enter the child, the order and the reference first."));
  SheetMade made = madeNow();
  if (session_.record()) made.second = secondCheckWords(session_.record());
  (desk_->*make)(shown_, made);
}

void MainWindow::showBoard() {
  editor_.finishAll();
  delete board_;
  board_ = new Board(shown_, desktopStrokeMs(), this);
  board_->setAttribute(Qt::WA_DeleteOnClose);
  board_->present(this);
}

/// One size for the whole program. Below the desktop's own letters only the working gets smaller.
void MainWindow::useTextSize(int percent) {
  const int size = std::clamp(percent, leastTextSize, mostTextSize);
  settings_.setTextSize(size);
  setTextSize(size);
  pane_->setZoom(size);
  sides_->follow();
  practice_->followTextSize(size);
  settingsDesk_->follow();
}

/// Kept nowhere: one person's choice ends with the child, and the next one has the house's.
void MainWindow::setUnitSystem(UnitSystem system) {
  unitsChosen_ = system;
  const UnitSystem counts = systemOf(system, rules_);
  (*actions_)[ActionId::unitsMetric]->setChecked(counts == UnitSystem::metric);
  (*actions_)[ActionId::unitsHousehold]->setChecked(counts == UnitSystem::household);
  (*actions_)[ActionId::unitsNone]->setChecked(counts == UnitSystem::none);
  editor_.offer(bareUnits(system, rules_));
  form_->showBareUnits();
  settingsDesk_->follow();
}

/// Of a case that is on the screen everything, as it stands now; otherwise what was said last.
void MainWindow::sayAgain() {
  Announcer& announcer = Announcer::of(*this);
  const bool isSeen = !session_.isCovered() && !session_.isComparing() && !editor_.draft().isEmpty();
  if (!isSeen) return announcer.again();
  announcer.say(CaseVoice::whole(editor_.draft(), shown_), Announcer::Wait::none);
}

/// To the flag, or on the empty start to the first thing that takes the keyboard.
void MainWindow::goToWorking() {
  if (pane_->flag()->isVisible()) return pane_->flag()->setFocus(Qt::ShortcutFocusReason);
  for (QWidget* one : pane_->findChildren<QWidget*>())
    if (one->isVisible() && one->focusPolicy() != Qt::NoFocus) return one->setFocus(Qt::ShortcutFocusReason);
}

void MainWindow::goToOtherSide() {
  const QWidget* focused = QApplication::focusWidget();
  if (focused && form_->isAncestorOf(focused))
    goToWorking();
  else
    form_->focusLast();
}

/// A number of the working leads to its field; what comes from a step or a constant has none.
void MainWindow::goToOrigin(const QString& path) { form_->focusField(path); }

/// What the desktop changes is followed.
bool MainWindow::event(QEvent* event) {
  const bool done = QMainWindow::event(event);
  if (event->type() == QEvent::ApplicationPaletteChange) setPalette(surfacePalette(QApplication::palette()));
  return done;
}

void MainWindow::closeEvent(QCloseEvent* event) {
  if (!mayForget(tr("The entries are not saved. Close the window?"))) return event->ignore();
  settings_.setGeometry(saveGeometry());
  settings_.setFormWidth(sides_->formWidth());
  clipboard_.empty();
  event->accept();
}

void MainWindow::dragEnterEvent(QDragEnterEvent* event) {
  if (!draggedFile(event->mimeData()).isEmpty()) event->acceptProposedAction();
}

void MainWindow::dropEvent(QDropEvent* event) {
  const QString file = draggedFile(event->mimeData());
  if (file.isEmpty()) return;
  event->acceptProposedAction();
  openFile(file);
}

}  // namespace wardchalk::ui
