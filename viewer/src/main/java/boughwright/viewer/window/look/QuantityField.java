// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.look;

import boughwright.modeller.problem.Place;
import boughwright.modeller.units.DisplayUnits;
import boughwright.modeller.units.UnreadableException;
import com.formdev.flatlaf.FlatClientProperties;
import java.awt.event.ActionEvent;
import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.awt.event.KeyEvent;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.DoubleConsumer;
import javax.swing.AbstractAction;
import javax.swing.BorderFactory;
import javax.swing.JLabel;
import javax.swing.JTextField;
import javax.swing.KeyStroke;
import net.miginfocom.swing.MigLayout;

/**
 * A quantity that is typed in the person's units. Up and down change it by a step, Shift by ten;
 * Enter and leaving it commit; Esc takes back what was typed. What cannot be read is not committed,
 * and a line beneath says why.
 */
public final class QuantityField extends HighAsWide implements Explained {
  private static final long serialVersionUID = 1L;
  private static final int LEAPS = 10;

  /**
   * What is asked for.
   *
   * @param name name for tests, such as {@code pull.tension}
   * @param label what a person calls it
   * @param measure the sort of quantity
   * @param least the least that is accepted [SI]
   * @param most the most that is accepted [SI]
   */
  public record Asked(String name, String label, Measure measure, double least, double most) {
    public Asked {
      if (!(least <= most)) {
        throw new IllegalArgumentException(label + " from " + least + " to " + most);
      }
    }
  }

  private final transient Asked asked;
  private final JLabel label;
  private final JTextField field = new JTextField(6);
  private final JLabel unit = Controls.note("");
  private final Prose fault = new Prose("", Shade.FAULT);
  private final transient List<DoubleConsumer> listeners = new ArrayList<>();
  private transient DisplayUnits units;
  private transient OptionalDouble value = OptionalDouble.empty();
  private transient Optional<Explanation> explanation = Optional.empty();

  public QuantityField(Asked asked, DisplayUnits units) {
    super(new MigLayout("wrap 1, fillx, insets 0, gapy 4, hidemode 3", "[grow,fill,0:pref]", ""));
    this.asked = asked;
    this.units = units;
    setName(asked.name() + ".box");
    label = Controls.note(asked.label());
    label.setLabelFor(field);
    field.setName(asked.name());
    fault.setName(asked.name() + ".fault");
    fault.setVisible(false);
    unit.setBorder(BorderFactory.createEmptyBorder(0, 0, 0, 8));
    field.putClientProperty(FlatClientProperties.TEXT_FIELD_TRAILING_COMPONENT, unit);
    field.putClientProperty(
        FlatClientProperties.SELECT_ALL_ON_FOCUS_POLICY,
        FlatClientProperties.SELECT_ALL_ON_FOCUS_POLICY_ALWAYS);
    add(label, "wmin 0");
    add(field, "growx, wmin 0, hmin " + Theme.length(Controls.TARGET));
    add(fault, "growx, wmin 0");
    listen();
    showValue();
  }

  private void listen() {
    field.addActionListener(event -> commit());
    on(KeyEvent.VK_ESCAPE, 0, this::revert);
    on(KeyEvent.VK_UP, 0, () -> step(1));
    on(KeyEvent.VK_DOWN, 0, () -> step(-1));
    on(KeyEvent.VK_UP, KeyEvent.SHIFT_DOWN_MASK, () -> step(LEAPS));
    on(KeyEvent.VK_DOWN, KeyEvent.SHIFT_DOWN_MASK, () -> step(-LEAPS));
    on(KeyEvent.VK_F1, 0, this::explain);
    field.addFocusListener(
        new FocusAdapter() {
          @Override
          public void focusGained(FocusEvent event) {
            Focus.reveal(QuantityField.this);
          }

          @Override
          public void focusLost(FocusEvent event) {
            if (!event.isTemporary()) {
              commit();
            }
          }
        });
  }

  private void on(int key, int held, Runnable run) {
    String name = "quantity " + key + " " + held;
    field.getInputMap().put(KeyStroke.getKeyStroke(key, held), name);
    field
        .getActionMap()
        .put(
            name,
            new AbstractAction() {
              private static final long serialVersionUID = 1L;

              @Override
              public boolean accept(Object sender) {
                return key != KeyEvent.VK_ESCAPE || isTouched();
              }

              @Override
              public void actionPerformed(ActionEvent event) {
                run.run();
              }
            });
  }

  /** Asks to be told of each value a person commits [SI]. */
  public void onCommit(DoubleConsumer listener) {
    listeners.add(listener);
  }

  /** Shows a value that came from elsewhere [SI]; what was typed and not committed is gone. */
  public void setValue(double newValue) {
    value = OptionalDouble.of(newValue);
    showValue();
  }

  /** Shows that there is no value. */
  public void clear() {
    value = OptionalDouble.empty();
    showValue();
  }

  /** What was committed or set last [SI]. */
  public OptionalDouble value() {
    return value;
  }

  /** Shows and reads in other units from now on. */
  public void use(DisplayUnits others) {
    units = others;
    showValue();
  }

  /** Says what the quantity is when asked. */
  public void explainAs(Explanation what) {
    explanation = Optional.of(what);
    field.setToolTipText(ExplanationPopup.tip(what));
    speak();
  }

  /** The field that is typed in. */
  public JTextField field() {
    return field;
  }

  /** Underlines a letter of the label; Alt with it goes to the field. */
  public void setMnemonic(char letter) {
    label.setDisplayedMnemonic(letter);
  }

  /** Whether something wrong is typed and not committed. */
  public boolean isFaulty() {
    return fault.isVisible();
  }

  /** Whether something is typed that is not taken yet; it must not be written over. */
  public boolean isBeingTyped() {
    return isFaulty() || field.isFocusOwner() && isTouched();
  }

  @Override
  public void setEnabled(boolean enabled) {
    super.setEnabled(enabled);
    field.setEnabled(enabled);
    label.setEnabled(enabled);
  }

  private boolean isTouched() {
    return isFaulty() || !field.getText().equals(shown());
  }

  private String shown() {
    return value.isPresent() ? asked.measure().show(value.getAsDouble(), units) : "";
  }

  private void showValue() {
    unit.setText(asked.measure().unit(units));
    field.setText(shown());
    tell("");
    speak();
  }

  private void revert() {
    showValue();
    field.selectAll();
  }

  /**
   * Takes what is typed, if it can be read.
   *
   * @return whether there is nothing wrong
   */
  public boolean commit() {
    if (!isTouched() || field.getText().isBlank() && value.isEmpty()) {
      return true;
    }
    return typed().isPresent() && take(typed().getAsDouble());
  }

  private OptionalDouble typed() {
    try {
      return OptionalDouble.of(asked.measure().read(field.getText(), units));
    } catch (UnreadableException e) {
      tell(e.at(Place.of(asked.label())).line());
      return OptionalDouble.empty();
    }
  }

  private boolean take(double newValue) {
    if (newValue < asked.least() || newValue > asked.most()) {
      tell(
          asked.label()
              + ": "
              + shown(newValue)
              + (newValue < asked.least()
                  ? " is too little. The least is " + shown(asked.least())
                  : " is too much. The most is " + shown(asked.most())));
      return false;
    }
    value = OptionalDouble.of(newValue);
    showValue();
    List.copyOf(listeners).forEach(listener -> listener.accept(newValue));
    return true;
  }

  /** With all digits, so that no limit looks as if it were kept. */
  private String shown(double limit) {
    String unit = asked.measure().unit(units);
    return asked.measure().show(limit, units) + (unit.isEmpty() ? "" : " " + unit);
  }

  private void step(int steps) {
    OptionalDouble from = isTouched() ? typed() : value;
    if (isTouched() && from.isEmpty()) {
      return;
    }
    double next = from.orElse(0) + steps * asked.measure().step(units);
    take(Math.min(asked.most(), Math.max(asked.least(), next)));
    field.selectAll();
  }

  private void tell(String words) {
    fault.say(words, Shade.FAULT);
    fault.setVisible(!words.isEmpty());
    field.putClientProperty(
        FlatClientProperties.OUTLINE, words.isEmpty() ? null : FlatClientProperties.OUTLINE_ERROR);
    speak();
    revalidate();
  }

  private void speak() {
    String inUnit = unit.getText().isEmpty() ? "" : ", " + unit.getText();
    field.getAccessibleContext().setAccessibleName(asked.label() + inUnit);
    String what = explanation.map(ExplanationPopup::spoken).orElse("");
    field.getAccessibleContext().setAccessibleDescription((fault.getText() + " " + what).strip());
  }

  @Override
  public Optional<Explanation> explanation() {
    return explanation;
  }

  @Override
  public void explain() {
    explanation.ifPresent(what -> ExplanationPopup.show(field, asked.label(), what));
  }
}
