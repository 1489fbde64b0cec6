// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/document/thumbnail.h"
#include "app/desktop/document/written_files.h"
#include "app/desktop/look/appearance.h"
#include "app/desktop/look/preferences.h"
#include "app/desktop/window/main_window.h"
#include "app/desktop/window/termination.h"
#include "app/output/version.h"
#include "app/wording/desktop_options.h"

#include <QApplication>
#include <QBuffer>
#include <QCommandLineParser>
#include <QDir>
#include <QElapsedTimer>
#include <QFile>
#include <QFileInfo>
#include <QIcon>
#include <QImage>
#include <QSessionManager>
#include <QTemporaryDir>
#include <QTextStream>

#include <algorithm>
#include <csignal>
#include <memory>

using namespace bothways::app;
using bothways::operator""_t;

namespace {

constexpr const char* kPictureMark = "Bothways window"; // of a picture that may be written over
constexpr int kLongestAnswer_ms = 60'000;

struct Program {
    Q_DECLARE_TR_FUNCTIONS(Program)
};

QString inWords(const Language& in, const bothways::core::Message& words)
{
    return words.empty() ? QString() : QString::fromStdString(in.say(words));
}

/// The options of the one list that the manual page is made from.
QList<QCommandLineOption> allOptions(const Language& in)
{
    QList<QCommandLineOption> options;
    for (const wording::DesktopOption& option : wording::desktopOptions())
        options += QCommandLineOption(QString(option.name), inWords(in, option.what),
                                      inWords(in, option.value));
    return options;
}

int wrongUse(const QString& sentence)
{
    QTextStream(stderr) << "bothways-desktop: " << sentence << '\n';
    return 2;
}

/// Waits until the answer about the study is there, and what is shown of its recordings.
bool settled(const MainWindow& window)
{
    QElapsedTimer waited;
    waited.start();
    while (window.isLoading()) {
        if (waited.hasExpired(kLongestAnswer_ms))
            return false;
        QCoreApplication::processEvents(QEventLoop::WaitForMoreEvents, 50);
    }
    QCoreApplication::processEvents();
    return true;
}

/// What is written is a picture of ours, and takes the place of nothing else.
int writePicture(QImage image, const QString& file)
{
    image.setText("Software", kPictureMark); // stands near the beginning of the file
    QByteArray bytes;
    QBuffer buffer(&bytes);
    image.save(&buffer, "PNG");
    const bothways::core::Outcome written =
        writeFile(file, bytes, {}, IfThere::refused, kPictureMark);
    if (written)
        return 0;
    QTextStream(stderr) << "bothways-desktop: "
                        << Program::tr("%1: the picture cannot be written: %2")
                               .arg(file, whyNotWritten(Language(), written.error()))
                        << '\n';
    return 4;
}

int paint(MainWindow& window, const QString& page, const QSize& size, const QString& file)
{
    if (!settled(window) || (!page.isEmpty() && !window.showPage(page)) || !settled(window)) {
        QTextStream(stderr) << "bothways-desktop: " << Program::tr("nothing to paint") << '\n';
        return 4;
    }
    for (int i = 0; i < 5; ++i) // layouts that follow layouts
        QCoreApplication::processEvents();
    return writePicture(window.picture(size).toImage(), file);
}

int paintThumbnail(const Language& in, const QCommandLineParser& parser)
{
    constexpr int kSmallest = 16;
    constexpr int kLargest = 1024;
    const QString size = parser.isSet("size") ? parser.value("size") : QString("128");
    const int side_px = size.toInt();
    if (side_px < kSmallest || side_px > kLargest)
        return wrongUse(Program::tr("--size: of a thumbnail expected a number from %1 to %2")
                            .arg(kSmallest)
                            .arg(kLargest));
    const QString study = parser.positionalArguments().value(0);
    const auto image = thumbnailOf(study, side_px);
    if (image)
        return writePicture(image.value(), parser.value("thumbnail"));
    QTextStream(stderr) << "bothways-desktop: "
                        << QString::fromStdString(in.describe(image.error())) << '\n';
    return static_cast<int>(image.error().code);
}

/// Names and icon; the platform plugin where a picture needs no screen.
void nameTheProgram()
{
    QCoreApplication::setOrganizationName("Bothways");
    QCoreApplication::setApplicationName("bothways-desktop");
    QCoreApplication::setApplicationVersion(kVersion);
    QGuiApplication::setApplicationDisplayName("Bothways");
    QGuiApplication::setDesktopFileName("bothways");
    QIcon icon(":/icons/bothways.svg");
    for (const int size : {16, 22, 24, 32, 48}) // drawn for that many pixels
        icon.addFile(QString(":/icons/small/%1.png").arg(size), QSize(size, size));
    QGuiApplication::setWindowIcon(icon);
}

void read(QCommandLineParser& parser, const Language& in, const QApplication& application)
{
    parser.setApplicationDescription(inWords(in, wording::desktopSummary()));
    parser.addHelpOption();
    parser.addVersionOption();
    const QString file = inWords(in, "FILE"_t);
    parser.addPositionalArgument(file, inWords(in, wording::desktopFile()),
                                 QLatin1Char('[') + file + QLatin1Char(']'));
    parser.addOptions(allOptions(in));
    parser.process(application);
}

/// Where preferences are kept, the language of all that is said after this among them: looked up
/// before the command line is read in earnest. Empty: in the usual place.
QString settingsAmong(const QStringList& arguments)
{
    QCommandLineParser parser;
    parser.addHelpOption();
    parser.addVersionOption();
    parser.addOptions(allOptions(Language()));
    parser.parse(arguments);
    return parser.value("settings");
}

/// @return  what is wrong with them; empty: nothing
QString takeChoices(const QCommandLineParser& parser, Preferences& preferences)
{
    if (parser.isSet("theme")) {
        const QStringList names{"system", "light", "dark"};
        const auto index = names.indexOf(parser.value("theme"));
        if (index < 0)
            return Program::tr("--theme: expected system, light or dark");
        preferences.setTheme(static_cast<ThemeChoice>(index));
    }
    if (parser.isSet("large-text"))
        preferences.setLargeText(true);
    if (parser.isSet("page") && !MainWindow::pageNames().contains(parser.value("page")))
        return Program::tr("--page: expected one of %1").arg(MainWindow::pageNames().join(", "));
    return {};
}

/// "1280x800"; an empty size for anything else.
QSize sizeFrom(const QString& text)
{
    const QStringList sides = text.split('x');
    if (sides.size() != 2 || sides[0].toInt() < 200 || sides[1].toInt() < 200)
        return {};
    return {sides[0].toInt(), sides[1].toInt()};
}

bool isPainting(int argc, char** argv)
{
    return std::any_of(argv, argv + argc, [](const char* a) {
        return qstrncmp(a, "--picture", 9) == 0 || qstrncmp(a, "--thumbnail", 11) == 0;
    });
}

/// What the window begins with. False: a file that was asked for cannot be opened.
bool begin(MainWindow& window, const QCommandLineParser& parser, Preferences& preferences,
           const QString& named)
{
    // A session that ended with a study open goes on with it.
    const QString interrupted = preferences.takeInterruptedStudy();
    if (parser.isSet("demo"))
        window.openDemo();
    if (parser.isSet("new"))
        window.newStudy();
    QString file = named;
    const bool nothingAsked = !parser.isSet("demo") && !parser.isSet("new");
    if (file.isEmpty() && nothingAsked)
        file = interrupted;
    if (file.isEmpty() && nothingAsked && parser.isSet("roadside"))
        file = preferences.recentFiles().value(0);
    const bool opened = file.isEmpty() || window.openFile(file);
    if (parser.isSet("roadside")) {
        if (!window.document())
            window.newStudy();
        if (window.document())
            window.openRoadside();
    }
    return opened;
}

/// How a session manager starts the program the next time: with what is open, whatever it was
/// started with. What is there already is the program and the session's own number.
QStringList commandToGoOn(const QSessionManager& session, const QCommandLineParser& parser,
                          const MainWindow& window)
{
    QStringList command = session.restartCommand();
    if (parser.isSet("settings"))
        command << "--settings" << QFileInfo(parser.value("settings")).absoluteFilePath();
    return command + window.argumentsToGoOn();
}

} // namespace

int main(int argc, char** argv)
{
    std::signal(SIGXFSZ, SIG_IGN); // a file that grew too large is said where it is written
    std::signal(SIGPIPE, SIG_IGN);
    const bool painting = isPainting(argc, argv);
    if (painting && qEnvironmentVariableIsEmpty("QT_QPA_PLATFORM"))
        qputenv("QT_QPA_PLATFORM", "offscreen"); // a picture needs no screen
    QApplication application(argc, argv);
    nameTheProgram();
    // A picture is of the program, not of its owner's habits.
    const QTemporaryDir scratch;
    QString settings = settingsAmong(QApplication::arguments());
    if (settings.isEmpty() && painting)
        settings = scratch.filePath("preferences.ini");
    const std::unique_ptr<Preferences> preferences = settings.isEmpty()
                                                         ? std::make_unique<Preferences>()
                                                         : std::make_unique<Preferences>(settings);
    installTranslation(application, *preferences);
    QCommandLineParser parser;
    read(parser, preferences->spoken(), application);
    if (const QString fault = takeChoices(parser, *preferences); !fault.isEmpty())
        return wrongUse(fault);
    if (parser.isSet("thumbnail"))
        return paintThumbnail(preferences->spoken(), parser);

    followAppearance(application, *preferences);
    MainWindow window(*preferences);
    QSize size;
    if (painting) {
        size = sizeFrom(parser.isSet("size") ? parser.value("size") : QString("1280x800"));
        if (size.isEmpty())
            return wrongUse(Program::tr("--size: expected WIDTHxHEIGHT, such as 1280x800"));
        window.resize(size);
    }
    const Termination termination;
    QObject::connect(&termination, &Termination::asked, &window, &MainWindow::endAtOnce);
    QObject::connect(&termination, &Termination::mayFollow, &window, &MainWindow::keepForNextTime);
    QObject::connect(&application, &QGuiApplication::saveStateRequest, &window,
                     [&](QSessionManager& session) {
                         session.setRestartCommand(commandToGoOn(session, parser, window));
                     });
    window.show();
    QString file = parser.positionalArguments().value(0);
    if (painting && QFileInfo(file).isFile()) { // a sheet would leave a study behind
        const QString copy = scratch.filePath(QFileInfo(file).fileName());
        if (QFile::copy(file, copy))
            file = copy;
    }
    if (!begin(window, parser, *preferences, file) && painting)
        return wrongUse(Program::tr("%1: cannot be opened").arg(file));
    if (!painting && parser.isSet("page"))
        window.showPage(parser.value("page"));
    if (painting)
        return paint(window, parser.value("page"), size, parser.value("picture"));
    return QApplication::exec();
}
