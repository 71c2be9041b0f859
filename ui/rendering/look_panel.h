#pragma once

#include "ui/rendering/look_view.h"

#include <QSettings>

class QCheckBox;
class QComboBox;
class QLabel;

namespace frontwright {

/// The rendering with what belongs to looking at it: exaggerated reveals and what they come to in
/// words, real size, distance.
class LookPanel : public QWidget {
    Q_OBJECT
public:
    LookPanel(Session&, QSettings&, QWidget* parent = nullptr);

    [[nodiscard]] LookView& view() { return *m_view; }
    [[nodiscard]] QCheckBox& revealsBox() { return *m_reveals; }
    [[nodiscard]] QComboBox& sizeBox() { return *m_size; }
    [[nodiscard]] QString said() const;

    /// Asks for the card again.
    void measureScreen();

protected:
    void showEvent(QShowEvent*) override;

private:
    void offerSizes();
    QLayout* bar(); ///< what is chosen, above the view
    void listen();
    void applySize();
    void showWords();

    Session& m_session;
    QSettings& m_settings;
    LookView* m_view;
    QCheckBox* m_reveals;
    QComboBox* m_size;
    QLabel* m_words;
    QLabel* m_scaleWords;
};

} // namespace frontwright
