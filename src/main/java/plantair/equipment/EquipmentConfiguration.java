package plantair.equipment;

import java.time.Clock;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import plantair.register.ChangeKind;
import plantair.register.Changes;
import plantair.register.Register;

/** The registers of equipment as beans. */
@Configuration(proxyBeanMethods = false)
class EquipmentConfiguration {

    @Bean
    Register<CompressorFacts, Compressor> compressorRegister(Compressors compressors, Changes changes, Clock clock) {
        return new Register<>(ChangeKind.COMPRESSOR, compressors, changes, clock);
    }

    @Bean
    Register<ReceiverFacts, Receiver> receiverRegister(Receivers receivers, Changes changes, Clock clock) {
        return new Register<>(ChangeKind.RECEIVER, receivers, changes, clock);
    }

    @Bean
    Register<PipeFacts, PipePiece> pipeRegister(PipePieces pipes, Changes changes, Clock clock) {
        return new Register<>(ChangeKind.PIPE, pipes, changes, clock);
    }
}
