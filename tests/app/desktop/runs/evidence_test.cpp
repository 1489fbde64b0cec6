// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/document/evidence.h"
#include "tests/app/desktop/support/desktop_fixture.h"

#include <QComboBox>
#include <QDesktopServices>
#include <QFile>
#include <QFileInfo>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QTextBrowser>
#include <QUrl>

namespace bothways::app::tests {

/// Stands for the program that the desktop opens files with: its slot takes an address.
class FileOpener final : public QTextBrowser {
public:
    FileOpener() { QDesktopServices::setUrlHandler("file", this, "setSource"); }
    ~FileOpener() override { QDesktopServices::unsetUrlHandler("file"); }
    QStringList opened;

protected:
    void doSetSource(const QUrl& url, QTextDocument::ResourceType) override
    {
        opened += url.toLocalFile();
    }
};

class EvidenceTest : public WindowTest {
protected:
    EvidenceTest()
    {
        EXPECT_TRUE(window->openFile(aSheet()));
        settle();
        clip = QFileInfo(window->document()->path()).absolutePath() + "/clip.mp4";
        QFile file(clip);
        EXPECT_TRUE(file.open(QIODevice::WriteOnly));
        file.write("abc");
    }
    QDialog* discard() const
    {
        trigger("discardRuns");
        return openDialog("discardDialog");
    }
    static void set(QDialog* dialog, const char* field, const QString& text)
    {
        dialog->findChild<QLineEdit*>(field)->setText(text);
    }
    static void ok(QDialog* dialog) { dialog->findChild<QPushButton*>("discardOk")->click(); }

    FileOpener opener;
    QString clip;
};

TEST_F(EvidenceTest, OfADiscardIsAFileWithAMomentAndOpens)
{
    choose(0);
    QDialog* dialog = discard();
    ASSERT_NE(dialog, nullptr);
    auto* reason = dialog->findChild<QComboBox*>("reason");
    reason->setCurrentIndex(reason->findData("passing_traffic"));
    auto* problem = dialog->findChild<QLabel*>("discardProblem");
    set(dialog, "evidenceSecond", "83,5");
    ok(dialog);
    EXPECT_TRUE(problem->isVisible()) << "a second of no clip";
    set(dialog, "evidenceFile", "none.mp4");
    ok(dialog);
    EXPECT_TRUE(problem->text().contains("none.mp4")) << problem->text().toStdString();
    EXPECT_TRUE(study().runs[0].counted());
    set(dialog, "evidence", "a lorry");
    set(dialog, "evidenceFile", clip);
    ok(dialog);
    ASSERT_FALSE(study().runs[0].counted());
    // FIPS 180-2, appendix B.1
    EXPECT_TRUE(QString::fromStdString(study().runs[0].discard->evidence)
                    .startsWith("a lorry [clip.mp4 @ 83.5 s, 3 bytes, SHA-256 ba7816bf8f01cfea"))
        << study().runs[0].discard->evidence;
    choose(0);
    trigger("openEvidence");
    EXPECT_EQ(opener.opened, QStringList(clip));
}

TEST_F(EvidenceTest, ThatIsGoneIsSaidAndNothingIsOpened)
{
    choose(0);
    QDialog* dialog = discard();
    ASSERT_NE(dialog, nullptr);
    set(dialog, "evidence", "a lorry");
    set(dialog, "evidenceFile", "clip.mp4");
    ok(dialog);
    const std::string words = study().runs[0].discard->evidence;
    using State = ShownEvidence::State;
    EXPECT_EQ(evidenceIn(*window->document(), words)->state, State::there);
    EXPECT_EQ(evidenceIn(*window->document(), words)->name, "clip.mp4");
    QFile file(clip);
    ASSERT_TRUE(file.open(QIODevice::Append));
    file.write("d");
    file.close();
    EXPECT_EQ(evidenceIn(*window->document(), words)->state, State::changed);
    ASSERT_TRUE(QFile::remove(clip));
    EXPECT_EQ(evidenceIn(*window->document(), words)->state, State::missing);
    choose(0);
    trigger("openEvidence");
    EXPECT_TRUE(opener.opened.isEmpty());
    EXPECT_TRUE(message().contains("The evidence is not there")) << message().toStdString();
    EXPECT_FALSE(evidenceIn(*window->document(), "a lorry [sic]"));
    choose(1);
    trigger("openEvidence");
    EXPECT_TRUE(message().contains("No evidence of the chosen runs is a file"))
        << message().toStdString();
}

TEST_F(EvidenceTest, OpensFromTheFindingWhichSaysWhenItIsMissing)
{
    core::Run run = study().runs[0];
    run.marks = {{30.0, "passing_traffic", "lorry"}};
    ASSERT_TRUE(window->document()->updateRun(run));
    settle();
    choose(0);
    QDialog* dialog = discard();
    ASSERT_NE(dialog, nullptr);
    EXPECT_EQ(dialog->findChild<QComboBox*>("reason")->currentData(), "passing_traffic");
    set(dialog, "evidenceFile", clip);
    set(dialog, "evidenceSecond", "12");
    ok(dialog);
    settle();
    auto* button = find<QPushButton>("openFindingEvidence");
    choose(1);
    choose(0);
    ASSERT_TRUE(waitFor([&] { return !button->isHidden(); }));
    EXPECT_EQ(button->text(), "Open clip.mp4, at 12 s");
    button->click();
    EXPECT_EQ(opener.opened, QStringList(clip));
    ASSERT_TRUE(QFile::remove(clip));
    button->click();
    EXPECT_EQ(button->text(), "Missing: clip.mp4, at 12 s");
    EXPECT_FALSE(button->isEnabled());
    EXPECT_EQ(opener.opened.size(), 1);
}

} // namespace bothways::app::tests
