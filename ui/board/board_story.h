#pragma once

#include <optional>
#include <vector>

#include "core/check/shown.h"
#include "core/words/case_facts.h"
#include "ui/working/stages.h"

namespace wardchalk::ui {

/// One question of the board: a step of the working, or at the end the verdict.
struct BoardPage {
  int number = 1;  ///< as the working counts its steps; the verdict is one more
  bool isVerdict = false;
  StepView view;              ///< of a step
  std::vector<Stage> stages;  ///< what each press uncovers; a verdict has its question and itself
  QString found;              ///< what the step adds to what has been found: "0.70 m²"; often empty
};

/// How far the board is uncovered.
struct BoardPlace {
  int page = 0;
  int stage = 0;
  bool predicting = false;  ///< at the question, and the room is asked to predict
  friend bool operator==(const BoardPlace&, const BoardPlace&) = default;
};

/// The order in which a board uncovers what may be seen of a worksheet.
class BoardStory {
 public:
  explicit BoardStory(Shown shown);

  /// Whether only the steps that decide are told; they keep their numbers in the working.
  [[nodiscard]] bool isInShort() const { return inShort_; }
  /// False, and nothing changed, where every step decides.
  bool tellInShort(bool inShort);
  /// The first stage of the page with this number, or of the one that comes after it.
  [[nodiscard]] BoardPlace atOrAfter(int number) const;

  [[nodiscard]] const Shown& shown() const { return shown_; }
  [[nodiscard]] const Worksheet& sheet() const { return shown_.sheet(); }
  [[nodiscard]] const std::vector<BoardPage>& pages() const { return pages_; }
  [[nodiscard]] const BoardPage& page(const BoardPlace& place) const;
  [[nodiscard]] const std::vector<Fact>& facts() const { return facts_; }
  /// The number of the last page.
  [[nodiscard]] int count() const { return pages_.back().number; }

  [[nodiscard]] BoardPlace first() const { return {}; }
  [[nodiscard]] BoardPlace last() const;
  /// The question of the step with this number; none if there is no such step.
  [[nodiscard]] std::optional<BoardPlace> atNumber(int number) const;
  /// One stage on; the last place stays. With `predict` each question is waited on first.
  [[nodiscard]] BoardPlace next(BoardPlace place, bool predict) const;
  /// One stage back, exactly; the first place stays.
  [[nodiscard]] BoardPlace back(BoardPlace place, bool predict) const;

  /// What has been uncovered so far of what the steps found, in their order: "step 1: 0.70 m²".
  [[nodiscard]] QStringList found(const BoardPlace& place) const;

 private:
  void addPages();
  void addStep(StepView view);
  [[nodiscard]] int lastStage(int page) const;

  Shown shown_;
  bool inShort_ = false;
  std::vector<BoardPage> pages_;
  std::vector<Fact> facts_;
};

}  // namespace wardchalk::ui
